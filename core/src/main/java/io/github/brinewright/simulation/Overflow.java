package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;

/**
 * What a bed lacks in the mean interval.
 *
 * @param chance that it runs out
 * @param volume that passes hard for that reason, in mean days
 */
record Overflow(double chance, double volume) {
  static final Overflow NONE = new Overflow(0, 0);

  /**
   * What passes between what a bed holds and a larger volume that a total is cut off at.
   *
   * @param total of the days
   * @param held by the bed
   * @param reached volume at which water no longer counts
   */
  static Overflow between(UseTotal total, double held, double reached) {
    return reached <= held
        ? NONE
        : new Overflow(total.beyond(held), total.excess(held) - total.excess(reached));
  }

  /** Part of one and the rest of another. */
  static Overflow mixed(double part, Overflow one, Overflow other) {
    return new Overflow(
        part * one.chance + (1 - part) * other.chance,
        part * one.volume + (1 - part) * other.volume);
  }
}

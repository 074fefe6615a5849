package io.github.brinewright.regeneration;

import io.github.brinewright.units.HardnessAmount;
import io.github.brinewright.units.Require;

/**
 * Capacity held back so that soft water lasts until the regeneration.
 *
 * @param held zero or more
 */
public record Reserve(HardnessAmount held) {
  /** Nothing held back: for immediate regeneration. */
  public static final Reserve NONE = new Reserve(HardnessAmount.ofGrains(0));

  /**
   * @throws IllegalArgumentException when negative
   */
  public Reserve {
    Require.notNegative("reserve", held);
  }

  /** One day's design load: the usual reserve of a delayed regeneration. */
  public static Reserve ofDay(HardnessAmount dailyLoad) {
    return new Reserve(dailyLoad);
  }
}

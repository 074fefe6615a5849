package io.github.brinewright.softener;

import java.time.Duration;

/**
 * How long the bed is washed. Slow rinse volumes lie within 7.5-22.5 gal/ft3 (UFC 3-240-13FN); the
 * minutes are common practice of households, shorter than a plant's.
 */
public enum CyclePlan {
  /** For clear water. */
  EVERYDAY(10, 15, 10),
  /** Less water, for clear city water. */
  WATER_SAVING(6, 10, 6),
  /** A longer backwash carries iron out of the bed. */
  IRON_BEARING(14, 15, 10);

  private final int backwashMinutes;
  private final double slowRinseGallonsPerCubicFoot;
  private final int fastRinseMinutes;

  CyclePlan(int backwashMinutes, double slowRinseGallonsPerCubicFoot, int fastRinseMinutes) {
    this.backwashMinutes = backwashMinutes;
    this.slowRinseGallonsPerCubicFoot = slowRinseGallonsPerCubicFoot;
    this.fastRinseMinutes = fastRinseMinutes;
  }

  /** {@return the time of the backwash} */
  public Duration backwash() {
    return Duration.ofMinutes(backwashMinutes);
  }

  /** {@return the US gallons of slow rinse for each cubic foot of resin} */
  public double slowRinseGallonsPerCubicFoot() {
    return slowRinseGallonsPerCubicFoot;
  }

  /** {@return the time of the fast rinse} */
  public Duration fastRinse() {
    return Duration.ofMinutes(fastRinseMinutes);
  }
}

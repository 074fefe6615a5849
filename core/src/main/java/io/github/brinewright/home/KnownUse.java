package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Volume;

/**
 * What a household really uses, found from readings after some months.
 *
 * @param mean of a day at home; 1 to 20,000 gal
 * @param coefficient standard deviation of that mean for one of it; 0 to 1, dimensionless
 */
public record KnownUse(Volume mean, double coefficient) {
  /** Mean use that may be known: 1 to 20,000 gal a day. */
  public static final Bounds<Volume> MEAN =
      Bounds.of(Volume.ofGallons(1), Volume.ofGallons(20_000));

  /** How well it may be known: 0 to 1; dimensionless. */
  public static final Bounds<Double> COEFFICIENT = Bounds.of(0.0, 1.0);

  /**
   * @param mean of a day at home
   * @param coefficient standard deviation of that mean for one of it
   * @throws IllegalArgumentException outside the ranges above
   */
  public KnownUse {
    MEAN.require("known use of a day", mean);
    COEFFICIENT.require("coefficient of variation of the known use", coefficient);
  }

  /** A multiple of the mean, as well known, but not beyond what may be known. */
  KnownUse times(double factor) {
    return new KnownUse(MEAN.nearest(mean.times(factor)), coefficient);
  }
}

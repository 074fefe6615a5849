package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Volume;

/**
 * A winter water bill, so that garden use does not count.
 *
 * @param billed the volume billed; 10 to 1,000,000 gallons
 * @param days the days it covers; 7 to 190
 */
public record Bill(Volume billed, int days) {
  /** Volumes that a bill may state: 10 to 1,000,000 gallons. */
  public static final Bounds<Volume> BILLED =
      Bounds.of(Volume.ofGallons(10), Volume.ofGallons(1_000_000));

  /** Days that a bill may cover: 7 to 190. */
  public static final Bounds<Integer> DAYS = Bounds.of(7, 190);

  /**
   * @param billed the volume billed
   * @param days the days it covers
   * @throws IllegalArgumentException outside the ranges above
   */
  public Bill {
    BILLED.require("billed volume", billed);
    DAYS.require("billed days", days);
  }

  /** The same days with a multiple of the volume, but not beyond what a bill may state. */
  Bill times(double factor) {
    return new Bill(BILLED.nearest(billed.times(factor)), days);
  }

  /** {@return the mean use of a day} */
  public Volume daily() {
    return billed.dividedBy(days);
  }
}

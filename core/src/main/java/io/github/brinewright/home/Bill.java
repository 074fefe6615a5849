package io.github.brinewright.home;

import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;

/**
 * A winter water bill, so that garden use does not count.
 *
 * @param billed the volume billed; more than zero
 * @param days the days it covers; 7 to 190
 */
public record Bill(Volume billed, int days) {
  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public Bill {
    Require.positive("billed volume", billed);
    Require.between("billed days", days, 7, 190);
  }

  /** Mean use of a day. */
  public Volume daily() {
    return billed.dividedBy(days);
  }
}

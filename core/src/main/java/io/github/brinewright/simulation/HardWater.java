package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Volume;

/**
 * Hard water that a bed lets pass in a mean year, by cause, counted alike for every control.
 *
 * @param regenerations of the year; dimensionless
 * @param runOut water that passes because the bed has run out
 * @param whileRegenerating water that is drawn while the bed regenerates
 * @param runOutDays days on which the bed has run out; dimensionless
 * @param runOutShare share of the regenerations that come after the bed has run out; 0 to 1
 */
public record HardWater(
    double regenerations,
    Volume runOut,
    Volume whileRegenerating,
    double runOutDays,
    double runOutShare) {

  /** {@return the hard water of the year from all causes} */
  public Volume total() {
    return runOut.plus(whileRegenerating);
  }

  /**
   * {@return all of it as so many days of a use}
   *
   * @param dailyUse water of one day; not zero
   */
  public double daysOf(Volume dailyUse) {
    return total().ratioTo(dailyUse);
  }
}

package io.github.brinewright.finding;

import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;

/**
 * Limits that a dealer may set.
 *
 * @param shortestDays the shortest interval at design use that is sold; 1 to 7
 * @param lowestPressure pressure that must be left at peak flow before it is worth a word
 * @param reserveRisk share of regenerations in which a delayed control may run out, up to 0.5; 0 to
 *     hold back one design day
 */
public record Limits(double shortestDays, Pressure lowestPressure, double reserveRisk) {
  /** Share of regenerations before which the bed has run out, above which it is not sold. */
  static final double OFTEN = 0.2;

  /** The same share, above which it is worth a word: a reserve for 5 % stays below. */
  static final double NOW_AND_THEN = 0.06;

  /** The pressure below which fixtures fail, as a share of the one worth a word. */
  private static final double LEAST_SHARE = 0.5;

  /** Two days and 30 psi: common practice. */
  public static final Limits USUAL = new Limits(2, Pressure.ofPsi(30), 0);

  /** Pressure that must be left at peak flow for the candidate to be sold: half of the lowest. */
  public Pressure leastPressure() {
    return lowestPressure.times(LEAST_SHARE);
  }

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public Limits {
    Require.between("shortest interval in days", shortestDays, 1, 7);
    Require.positive("lowest pressure", lowestPressure);
    Require.between("risk of running out", reserveRisk, 0, 0.5);
  }
}

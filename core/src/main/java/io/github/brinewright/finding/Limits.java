package io.github.brinewright.finding;

import io.github.brinewright.units.Pressure;
import io.github.brinewright.units.Require;

/**
 * Limits that a dealer may set.
 *
 * @param shortestDays the shortest interval at design use that is sold; 1 to 7
 * @param lowestPressure pressure that must be left at peak flow before it is worth a word
 */
public record Limits(double shortestDays, Pressure lowestPressure) {
  /** The pressure below which fixtures fail, as a share of the one worth a word. */
  private static final double LEAST_SHARE = 0.5;

  /** Two days and 30 psi: common practice. */
  public static final Limits USUAL = new Limits(2, Pressure.ofPsi(30));

  /** Pressure that must be left at peak flow for the option to be sold: half of the lowest. */
  public Pressure leastPressure() {
    return lowestPressure.times(LEAST_SHARE);
  }

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public Limits {
    Require.between("shortest interval in days", shortestDays, 1, 7);
    Require.positive("lowest pressure", lowestPressure);
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Require;

/**
 * The capacity that a bed has left after some years: (1 − loss a year) to the power of the years,
 * since each year takes its share of what is left, and never less than {@link #LEAST}. Example: 10
 * years at 3 % → 0.737. Source: UFC 3-240-13FN, 1 to 5 % a year; the middle is common practice.
 */
final class AgeLoss {
  /** Loss a year that is reckoned with, and the range that it lies in; dimensionless. */
  static final double USUAL = 0.03;

  static final double LEAST_A_YEAR = 0.01;
  static final double MOST_A_YEAR = 0.05;

  /** A bed that serves at all holds more than half of what it held when new: common practice. */
  static final double LEAST = 0.56;

  private AgeLoss() {}

  /**
   * Share left after some years; dimensionless.
   *
   * @param years zero or more
   * @param aYear loss of a year, 0 to 1
   */
  static double left(int years, double aYear) {
    Require.between("capacity lost a year", aYear, 0, 1);
    return Math.max(LEAST, Math.pow(1 - aYear, years));
  }
}

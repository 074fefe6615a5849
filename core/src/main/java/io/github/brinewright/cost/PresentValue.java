package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;

/**
 * Present value factors, dimensionless. Rates are yearly fractions from −0.5 to 1, years 0 to 200;
 * other values are refused with an {@link IllegalArgumentException}. Source: NIST Handbook 135.
 */
public final class PresentValue {
  private PresentValue() {}

  private static void check(double discount, double rise, int years) {
    Require.between("discount rate", discount, -0.5, 1);
    Require.between("rise of prices", rise, -0.5, 1);
    Require.between("years", years, 0, 200);
  }

  /**
   * {@return the single present value: 1 ÷ (1 + d)^n} Example: 3 %, 10 years → 0.7441.
   *
   * @param discount yearly discount rate, as a fraction; −0.5 to 1
   * @param years 0 to 200
   * @throws IllegalArgumentException outside these ranges
   */
  public static double single(double discount, int years) {
    check(discount, 0, years);
    return Math.pow(1 + discount, -years);
  }

  /**
   * {@return the uniform present value of one unit at the end of each year} Example: 3 %, 10 years
   * → 8.5302.
   *
   * @param discount yearly discount rate, as a fraction; −0.5 to 1
   * @param years 0 to 200
   * @throws IllegalArgumentException outside these ranges
   */
  public static double uniform(double discount, int years) {
    return escalating(discount, 0, years);
  }

  /**
   * {@return the modified uniform present value of a unit of today's money that rises by {@code
   * rise} each year: (1 + e) ÷ (d − e) × (1 − ((1 + e) ÷ (1 + d))^n), and n where both rates are
   * equal} Example: 3 %, 2 %, 10 years → 9.4813.
   *
   * @param discount yearly discount rate, as a fraction; −0.5 to 1
   * @param rise yearly rise of the price, as a fraction; −0.5 to 1
   * @param years 0 to 200
   * @throws IllegalArgumentException outside these ranges
   */
  public static double escalating(double discount, double rise, int years) {
    check(discount, rise, years);
    if (Math.abs(discount - rise) < 1e-12) {
      return years;
    }
    double ratio = (1 + rise) / (1 + discount);
    return (1 + rise) / (discount - rise) * (1 - Math.pow(ratio, years));
  }
}

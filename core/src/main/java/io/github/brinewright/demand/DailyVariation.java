package io.github.brinewright.demand;

import io.github.brinewright.quantity.Require;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * How the use of a day strays about its mean: gamma-like, with weekday factors and a correlation
 * from one day to the next.
 *
 * @param coefficient of variation; 0 to 1.5; dimensionless
 * @param nextDay correlation from one day to the next; 0 to 0.9; dimensionless
 * @param weekdays factors of Monday to Sunday; dimensionless
 */
public record DailyVariation(double coefficient, double nextDay, List<Double> weekdays) {
  /**
   * Median household of 56 with 15,549 days: 0.461, 0.13, weekend 1.05 and 1.08. Source: DAIAD open
   * meter data (trial A, 2016-17), CC BY-SA 4.0.
   */
  public static final DailyVariation USUAL =
      new DailyVariation(0.461, 0.13, List.of(0.986, 0.976, 0.970, 0.972, 0.967, 1.047, 1.084));

  /** The same use each day. */
  public static final DailyVariation NONE =
      new DailyVariation(0, 0, List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0));

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public DailyVariation {
    Require.between("coefficient of variation", coefficient, 0, 1.5);
    Require.between("correlation of days", nextDay, 0, 0.9);
    weekdays = List.copyOf(weekdays);
    Require.between("weekday factors", weekdays.size(), 7, 7);
  }

  /** Shape of the gamma distribution: 1 ÷ coefficient²; dimensionless. */
  public double shape() {
    return 1 / (coefficient * coefficient);
  }

  /**
   * The use that a share of days does not exceed, as a multiple of the mean. Example: 0.95 at 0.457
   * → 1.851. Source: gamma quantile.
   *
   * @param share 0 to 1
   */
  public double quantile(double share) {
    return coefficient == 0
        ? 1
        : new GammaDistribution(shape(), 1 / shape()).inverseCumulativeProbability(share);
  }

  /**
   * The share of days above a multiple of the mean. Example: 1.5 at 0.461 → 0.13. Source: gamma
   * distribution.
   *
   * @param multiple zero or more; dimensionless
   */
  public double exceedance(double multiple) {
    return coefficient == 0
        ? multiple < 1 ? 1 : 0
        : Gamma.regularizedGammaQ(shape(), shape() * multiple);
  }

  /**
   * The chance that the use past a random moment of a day, up to the night, exceeds a multiple of
   * the mean: Q(k+1, k m) − m Q(k, k m) with the shape k. A meter reaches its set volume at such a
   * moment. Source: renewal theory, the stationary excess (Cox, 1962).
   *
   * @param multiple zero or more; dimensionless
   */
  public double excessBeyond(double multiple) {
    if (coefficient == 0) {
      return Math.max(0, 1 - multiple);
    }
    double k = shape();
    return Gamma.regularizedGammaQ(k + 1, k * multiple)
        - multiple * Gamma.regularizedGammaQ(k, k * multiple);
  }

  /**
   * The chance that some days together use more than a multiple of the mean day: a gamma
   * distribution whose variation takes the correlation of the days in. Example: 5 days, 6 → 0.17.
   * Source: DAIAD open meter data, whose totals of 2 to 7 days vary so.
   *
   * @param days 1 or more
   * @param multiple of the mean of one day; zero or more; dimensionless
   */
  public double totalBeyond(int days, double multiple) {
    double ratio = multiple / days;
    return new DailyVariation(coefficientOfTotal(days), 0, weekdays).exceedance(ratio);
  }

  private double coefficientOfTotal(int days) {
    double together = days;
    for (int apart = 1; apart < days; apart++) {
      together += 2 * (days - apart) * Math.pow(nextDay, apart);
    }
    return coefficient * Math.sqrt(together) / days;
  }

  /** Mean of that use as a multiple of the daily mean: (1 + coefficient²) ÷ 2. */
  public double meanExcess() {
    return (1 + coefficient * coefficient) / 2;
  }

  /**
   * The reserve, as a multiple of the mean daily use, that is not enough in a chosen share of
   * regenerations. Example: 0.05 at 0.461 → 1.37.
   *
   * @param risk 0.0001 to 0.5
   * @throws IllegalArgumentException outside that range
   */
  public double reserveForRisk(double risk) {
    Require.between("risk of running out", risk, 0.0001, 0.5);
    return new BrentSolver(1e-10).solve(200, m -> excessBeyond(m) - risk, 0, 20);
  }
}

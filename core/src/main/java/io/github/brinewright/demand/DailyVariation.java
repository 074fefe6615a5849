package io.github.brinewright.demand;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.CalendarYear;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * How the use of a day strays about its mean: gamma-like, with weekday factors and a correlation
 * from one day to the next.
 *
 * @param coefficient of variation; 0 to 1.5, below 0.001 all days are taken as the same;
 *     dimensionless
 * @param nextDay correlation from one day to the next; 0 to 0.9; dimensionless
 * @param weekdays factors of Monday to Sunday, each 0.1 to 5; dimensionless
 */
public record DailyVariation(double coefficient, double nextDay, List<Double> weekdays) {
  /** Coefficients of variation that are accepted: 0 to 1.5; dimensionless. */
  public static final Bounds<Double> COEFFICIENT = Bounds.of(0.0, 1.5);

  /** Correlations from one day to the next that are accepted: 0 to 0.9; dimensionless. */
  public static final Bounds<Double> NEXT_DAY = Bounds.of(0.0, 0.9);

  /** Weekday factors that are accepted: 0.1 to 5; dimensionless. */
  public static final Bounds<Double> WEEKDAY = Bounds.of(0.1, 5.0);

  /** Risks of running out that a reserve may be chosen for: 0.0001 to 0.5; dimensionless. */
  public static final Bounds<Double> RISK = Bounds.of(0.0001, 0.5);

  private static final double LEAST_VARIED = 0.001;
  private static final double BEYOND_ANY_DAY = 1_000_000;
  private static final Bounds<Integer> TOTAL_OF = Bounds.of(1, CalendarYear.DAYS);
  private static final Bounds<Double> SHARE = Bounds.of(0.0, 0.999_999);
  private static final Bounds<Double> MULTIPLE = Bounds.of(0.0, Double.MAX_VALUE);

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
   * @param coefficient of variation
   * @param nextDay correlation from one day to the next
   * @param weekdays factors of Monday to Sunday, each 0.1 to 5
   * @throws IllegalArgumentException outside the ranges above
   */
  public DailyVariation {
    COEFFICIENT.require("coefficient of variation", coefficient);
    NEXT_DAY.require("correlation of days", nextDay);
    weekdays = List.copyOf(weekdays);
    Bounds.of(7, 7).require("number of weekday factors", weekdays.size());
    weekdays.forEach(factor -> WEEKDAY.require("weekday factor", factor));
  }

  /**
   * {@return the shape of the gamma distribution: 1 ÷ coefficient²; dimensionless, and infinite
   * where the coefficient is 0} Example: 0.461 → 4.705. Source: gamma distribution.
   */
  public double shape() {
    return 1 / (coefficient * coefficient);
  }

  /** {@return whether all days are taken as the same: a coefficient of variation below 0.001} */
  public boolean steady() {
    return coefficient < LEAST_VARIED;
  }

  /**
   * {@return the use that a share of days does not exceed, as a multiple of the mean} Example: 0.95
   * at 0.457 → 1.851. Source: gamma quantile.
   *
   * @param share 0 to 0.999999; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double quantile(double share) {
    SHARE.require("share of days", share);
    return steady()
        ? 1
        : new GammaDistribution(shape(), 1 / shape()).inverseCumulativeProbability(share);
  }

  /**
   * {@return the share of days above a multiple of the mean} Example: 1.5 at 0.461 → 0.137. Source:
   * gamma distribution.
   *
   * @param multiple zero or more, finite; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double exceedance(double multiple) {
    MULTIPLE.require("multiple of the mean use", multiple);
    return steady()
        ? multiple < 1 ? 1 : 0
        : Gamma.regularizedGammaQ(shape(), shape() * Math.min(multiple, BEYOND_ANY_DAY));
  }

  /**
   * {@return the chance that the use past a random moment of a day, up to the night, exceeds a
   * multiple of the mean: Q(k+1, k m) − m Q(k, k m) with the shape k} A meter reaches its set
   * volume at such a moment. Example: 1.48 at 0.461 → 0.05. Source: renewal theory, the stationary
   * excess (Cox, 1962).
   *
   * @param multiple zero or more, finite; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double excessBeyond(double multiple) {
    MULTIPLE.require("multiple of the mean use", multiple);
    return stationaryExcess(Math.min(multiple, BEYOND_ANY_DAY));
  }

  private double stationaryExcess(double multiple) {
    if (steady()) {
      return Math.max(0, 1 - multiple);
    }
    double k = shape();
    return Gamma.regularizedGammaQ(k + 1, k * multiple)
        - multiple * Gamma.regularizedGammaQ(k, k * multiple);
  }

  /**
   * {@return the chance that some days together use more than a multiple of the mean day: a gamma
   * distribution whose variation takes the correlation of the days in} Example: 5 days, 6 → 0.185.
   * Source: DAIAD open meter data, whose totals of 2 to 7 days vary so.
   *
   * @param days 1 to 365
   * @param multiple of the mean of one day; zero or more, finite; dimensionless
   * @throws IllegalArgumentException outside these ranges
   */
  public double totalBeyond(int days, double multiple) {
    TOTAL_OF.require("days together", days);
    MULTIPLE.require("multiple of the mean use", multiple);
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

  /**
   * {@return the mean use past a random moment of a day, up to the night, as a multiple of the
   * daily mean: (1 + coefficient²) ÷ 2; dimensionless} Example: 0.461 → 0.606. Source: renewal
   * theory (Cox, 1962).
   */
  public double meanExcess() {
    return (1 + coefficient * coefficient) / 2;
  }

  /**
   * {@return the reserve, as a multiple of the mean daily use, that is not enough in a chosen share
   * of regenerations} Example: 0.05 at 0.461 → 1.480. Source: renewal theory (Cox, 1962).
   *
   * @param risk 0.0001 to 0.5; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double reserveForRisk(double risk) {
    RISK.require("risk of running out", risk);
    return new BrentSolver(1e-10).solve(200, m -> stationaryExcess(m) - risk, 0, 20);
  }
}

package io.github.brinewright.demand;

import io.github.brinewright.quantity.Require;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How well the mean use of a home is known: its own mean is a multiple of the stated one, lognormal
 * with the mean 1.
 *
 * @param coefficient of variation of that multiple; 0 to 1; dimensionless
 */
public record UncertainMean(double coefficient) {
  /** With a water bill: common practice. */
  public static final UncertainMean WITH_BILL = new UncertainMean(0.10);

  /**
   * Without a bill: homes differ so about the mean of their size. Source: DAIAD open meter data, 56
   * households: 0.457.
   */
  public static final UncertainMean WITHOUT_BILL = new UncertainMean(0.457);

  private static final double STEP = 0.5;
  private static final int STEPS = 9;
  private static final double HIGHEST = 100;
  private static final int YEAR = 365;

  /**
   * A home out of all.
   *
   * @param multiple of the stated mean; 0 to 1,000,000
   * @param weight of the home, 0 to 1; the weights of all draws add up to 1
   */
  public record Draw(double multiple, double weight) {
    /**
     * @throws IllegalArgumentException when the multiple is not a number or the weight not 0 to 1
     */
    public Draw {
      Require.between("multiple of the mean use", multiple, 0, 1e6);
      Require.between("weight of a home", weight, 0, 1);
    }
  }

  /**
   * @throws IllegalArgumentException outside the range above
   */
  public UncertainMean {
    Require.between("coefficient of variation of the mean use", coefficient, 0, 1);
  }

  private double deviation() {
    return Math.sqrt(Math.log1p(coefficient * coefficient));
  }

  private double multiple(double z) {
    double s = deviation();
    return Math.exp(s * z - s * s / 2);
  }

  /**
   * Homes that stand for all: nodes of the normal variable half a deviation apart, out to 4.5; the
   * trapezoid rule, whose weights add up to 1 within 1e-5.
   */
  public List<Draw> draws() {
    return coefficient == 0
        ? List.of(new Draw(1, 1))
        : IntStream.rangeClosed(-STEPS, STEPS).mapToObj(step -> draw(step * STEP)).toList();
  }

  private Draw draw(double z) {
    return new Draw(multiple(z), STEP * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI));
  }

  /** Mean over all homes of a figure that depends on the multiple. */
  public double mean(DoubleUnaryOperator figure) {
    return draws().stream()
        .mapToDouble(draw -> draw.weight() * figure.applyAsDouble(draw.multiple()))
        .sum();
  }

  /**
   * The multiple that a share of homes stays below. Example: 0.75 at 0.457 → 1.22.
   *
   * @param share 0.00001 to 0.99999
   * @throws IllegalArgumentException outside this range
   */
  public double quantile(double share) {
    Require.between("share of homes", share, 1e-5, 1 - 1e-5);
    return multiple(new NormalDistribution(null, 0, 1).inverseCumulativeProbability(share));
  }

  /**
   * How many times the stated mean a bed must hold for each of some days, so that their use stays
   * within it in a share of cases, over all homes. Example: 0.9, 1 day with a bill and 7 days
   * without → 1.63 and 1.64. Source: gamma sum of the days, lognormal spread of the homes; own
   * computation.
   *
   * @param days 1 to 365
   * @param share 0.01 to 0.999
   * @throws IllegalArgumentException outside these ranges
   */
  public double factor(DailyVariation variation, int days, double share) {
    Require.between("days together", days, 1, YEAR);
    requireShare(share);
    return new BrentSolver(1e-9)
        .solve(500, factor -> 1 - share - beyond(variation, days, days * factor), 0, HIGHEST);
  }

  /**
   * The longest interval whose use stays within what a bed holds in a share of cases, over all
   * homes; 0 when not even one day's does. Example: 6 mean days, 0.9 with a bill → 4 days.
   *
   * @param holds what the bed holds, in stated mean days; 0 to 1,000,000
   * @param share 0.01 to 0.999
   * @param most days to try, 1 to 365
   * @throws IllegalArgumentException outside these ranges
   */
  public int longestInterval(DailyVariation variation, double holds, double share, int most) {
    Require.between("mean days that the bed holds", holds, 0, 1e6);
    Require.between("most days of an interval", most, 1, YEAR);
    requireShare(share);
    int days = 0;
    while (days < most && beyond(variation, days + 1, holds) <= 1 - share) {
      days++;
    }
    return days;
  }

  private static void requireShare(double share) {
    Require.between("share of cases", share, 0.01, 0.999);
  }

  private double beyond(DailyVariation variation, int days, double holds) {
    return mean(multiple -> variation.totalBeyond(days, holds / multiple));
  }

  /**
   * The reserve, in stated mean days, that is not enough in a chosen share of all these homes'
   * regenerations; a home that uses more regenerates more often and counts the more. Example: 0.05
   * → 1.51 with a bill, 2.06 without. Source: renewal theory, the stationary excess (Cox, 1962);
   * own computation.
   *
   * @param risk 0.0001 to 0.5
   * @throws IllegalArgumentException outside that range
   */
  public double reserveForRisk(DailyVariation variation, double risk) {
    Require.between("risk of running out", risk, 0.0001, 0.5);
    return new BrentSolver(1e-9)
        .solve(
            500, reserve -> mean(m -> m * variation.excessBeyond(reserve / m)) - risk, 0, HIGHEST);
  }
}

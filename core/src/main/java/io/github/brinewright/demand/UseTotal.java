package io.github.brinewright.demand;

import io.github.brinewright.quantity.Require;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * The use of one or more days together, taken as gamma distributed. The sum of independent gamma
 * days of one scale is exactly so; of correlated days of unlike mean it is nearly so.
 *
 * @param mean zero to 1e12; in any unit of volume, which the other arguments and results share
 * @param variance zero to 1e24; in the square of that unit; up to 1e-9 of the mean's square the use
 *     is taken as constant
 */
public record UseTotal(double mean, double variance) {
  private static final double SMALLEST = 1e-9;
  private static final double ACCURACY = 1e-11;
  private static final int MOST_TERMS = 100_000;
  private static final double LARGEST = 1e12;

  /**
   * @param mean zero to 1e12
   * @param variance zero to 1e24
   * @throws IllegalArgumentException outside the ranges above
   */
  public UseTotal {
    Require.between("mean use", mean, 0, LARGEST);
    Require.between("variance of the use", variance, 0, LARGEST * LARGEST);
  }

  /**
   * {@return a day of this mean whose coefficient of variation is given}
   *
   * @param mean mean use; zero to 1e12, in any unit of volume
   * @param coefficient standard deviation for one of the mean; zero or more, dimensionless
   */
  public static UseTotal of(double mean, double coefficient) {
    return new UseTotal(mean, mean * mean * coefficient * coefficient);
  }

  private boolean constant() {
    return variance <= SMALLEST * mean * mean;
  }

  private double shape() {
    return mean * mean / variance;
  }

  private double scaled(double use) {
    return use * mean / variance;
  }

  /**
   * {@return the chance that the total exceeds a use: Q(k, x/θ) with the shape k = mean² ÷ variance
   * and the scale θ = variance ÷ mean} Example: mean 1, variance 0.2125, more than 1.5 → 0.137.
   * Source: gamma distribution.
   *
   * @param use in the unit of the mean; finite
   */
  public double beyond(double use) {
    if (use <= 0) {
      return 1;
    }
    return constant() ? (use < mean ? 1 : 0) : q(shape(), scaled(use));
  }

  /**
   * {@return the mean of what the total exceeds a use by, counted as zero where it does not: mean
   * Q(k+1, x/θ) − x Q(k, x/θ)} Example: mean 1, variance 0.2125, beyond 1.5 → 0.047. Source: gamma
   * distribution, partial expectation.
   *
   * @param use in the unit of the mean; finite
   */
  public double excess(double use) {
    if (use <= 0) {
      return mean - use;
    }
    if (constant()) {
      return Math.max(0, mean - use);
    }
    double y = scaled(use);
    return Math.max(0, (mean - use) * q(shape(), y) + mean * step(shape(), y));
  }

  /**
   * {@return the density at a use; per unit of volume}
   *
   * @param use in the unit of the mean; finite
   */
  public double density(double use) {
    return use <= 0 || constant() ? 0 : step(shape(), scaled(use)) * shape() / use;
  }

  /**
   * {@return the use that a share of such totals does not exceed}
   *
   * @param share of the totals; 0 to 1, dimensionless
   */
  public double quantile(double share) {
    return constant()
        ? mean
        : new GammaDistribution(null, shape(), variance / mean).inverseCumulativeProbability(share);
  }

  private static double q(double shape, double y) {
    return Gamma.regularizedGammaQ(shape, y, ACCURACY, MOST_TERMS);
  }

  /** Q(k+1, y) − Q(k, y). */
  private static double step(double shape, double y) {
    return Math.exp(shape * Math.log(y) - y - Gamma.logGamma(shape + 1));
  }
}

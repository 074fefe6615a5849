package io.github.brinewright.study;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.quantity.Require;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What is not known of a home, drawn together. Each quantity has a stream of its own, spread evenly
 * over its distribution: the kth draw lies at a random place in the kth of equal shares, in an
 * order of its own, so that few draws stand for many.
 */
public final class Draws {
  /** Seed used unless another one is wanted. */
  public static final long USUAL_SEED = 20_260_701L;

  private static final double PRICES = 0.15;
  private static final double MEDIAN_VARIATION = 0.46;
  private static final double VARIATION_LOG_DEVIATION = 0.25;

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private final double[] use;
  private final double[] variation;
  private final double[] salt;
  private final double[] water;

  /**
   * Draws what is not known of a home.
   *
   * @param home what the home asks for
   * @param count how many; 1 to 100,000
   * @param seed of the random numbers
   * @throws IllegalArgumentException outside that range
   */
  public Draws(HomeLoad home, int count, long seed) {
    Require.between("draws", count, 1, 100_000);
    SplittableRandom random = new SplittableRandom(seed);
    UncertainMean mean = home.use().likely().uncertain();
    UncertainMean price = new UncertainMean(PRICES);
    use = spread(count, random, mean::quantile);
    variation = spread(count, random, Draws::variationAt);
    salt = spread(count, random, price::quantile);
    water = spread(count, random, price::quantile);
  }

  private static double variationAt(double share) {
    return MEDIAN_VARIATION
        * Math.exp(VARIATION_LOG_DEVIATION * STANDARD.inverseCumulativeProbability(share));
  }

  private static double[] spread(int count, SplittableRandom random, DoubleUnaryOperator quantile) {
    double[] values = new double[count];
    for (int k = 0; k < count; k++) {
      values[k] = quantile.applyAsDouble(inside((k + random.nextDouble()) / count));
    }
    for (int k = count - 1; k > 0; k--) {
      int other = random.nextInt(k + 1);
      double value = values[k];
      values[k] = values[other];
      values[other] = value;
    }
    return values;
  }

  private static double inside(double share) {
    return Math.min(1 - 2e-5, Math.max(2e-5, share));
  }

  /**
   * {@return places from 0 to 1, spread evenly, for one more quantity that is not known}
   *
   * @param count how many
   * @param seed of the random numbers
   */
  public static double[] places(int count, long seed) {
    return spread(count, new SplittableRandom(seed), place -> place);
  }

  /** {@return how many draws there are} */
  public int count() {
    return use.length;
  }

  /**
   * {@return the mean use of a draw as a multiple of the stated one}
   *
   * @param draw from 0
   */
  public double use(int draw) {
    return use[draw];
  }

  /**
   * {@return the coefficient of variation of the days}
   *
   * @param draw from 0
   */
  public double variation(int draw) {
    return variation[draw];
  }

  /**
   * {@return the price of salt as a multiple of the stated one}
   *
   * @param draw from 0
   */
  public double salt(int draw) {
    return salt[draw];
  }

  /**
   * {@return the price of water and sewer as a multiple of the stated one}
   *
   * @param draw from 0
   */
  public double water(int draw) {
    return water[draw];
  }
}

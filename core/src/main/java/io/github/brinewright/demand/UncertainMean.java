package io.github.brinewright.demand;

import io.github.brinewright.quantity.Require;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
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

  /**
   * A home out of all.
   *
   * @param multiple of the stated mean; 0 to 1,000,000
   * @param weight of the home, 0 to 1; the weights of all draws add up to 1
   */
  public record Draw(double multiple, double weight) {
    /**
     * @param multiple of the stated mean
     * @param weight of the home, 0 to 1
     * @throws IllegalArgumentException when the multiple is not a number or the weight not 0 to 1
     */
    public Draw {
      Require.between("multiple of the mean use", multiple, 0, 1e6);
      Require.between("weight of a home", weight, 0, 1);
    }
  }

  /**
   * @param coefficient of variation of that multiple
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
   * {@return the homes that stand for all: nodes of the normal variable half a deviation apart, out
   * to 4.5; the trapezoid rule, whose weights add up to 1 within 1e-5}
   */
  public List<Draw> draws() {
    return coefficient == 0
        ? List.of(new Draw(1, 1))
        : IntStream.rangeClosed(-STEPS, STEPS).mapToObj(step -> draw(step * STEP)).toList();
  }

  private Draw draw(double z) {
    return new Draw(multiple(z), STEP * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI));
  }

  /**
   * {@return the mean over all homes of a figure that depends on the multiple}
   *
   * @param figure gives the figure for a multiple of the stated mean
   */
  public double mean(DoubleUnaryOperator figure) {
    return draws().stream()
        .mapToDouble(draw -> draw.weight() * figure.applyAsDouble(draw.multiple()))
        .sum();
  }

  /**
   * {@return the multiple that a share of homes stays below} Example: 0.75 at 0.457 → 1.22.
   *
   * @param share 0.00001 to 0.99999
   * @throws IllegalArgumentException outside this range
   */
  public double quantile(double share) {
    Require.between("share of homes", share, 1e-5, 1 - 1e-5);
    return multiple(new NormalDistribution(null, 0, 1).inverseCumulativeProbability(share));
  }
}

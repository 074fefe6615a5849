package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Require;
import java.util.Arrays;

/**
 * A figure over many simulated years, or over draws of what is not known.
 *
 * @param mean of all years; finite
 * @param low that 5 % of the years lie below; finite
 * @param high that 5 % of the years lie above; finite, not below {@code low}
 */
public record Spread(double mean, double low, double high) {
  private static final double TAIL = 0.05;
  private static final double NARROW = 0.02;

  /**
   * @param mean of all years
   * @param low that 5 % of the years lie below
   * @param high that 5 % of the years lie above
   * @throws IllegalArgumentException outside the ranges above
   */
  public Spread {
    Require.between("mean", mean, -Double.MAX_VALUE, Double.MAX_VALUE);
    Require.between("high end", high, -Double.MAX_VALUE, Double.MAX_VALUE);
    Require.between("low end", low, -Double.MAX_VALUE, high);
  }

  /**
   * {@return the spread of some figures}
   *
   * @param years the figure of each year or draw; at least one, all finite
   */
  public static Spread of(double[] years) {
    double[] sorted = years.clone();
    Arrays.sort(sorted);
    return new Spread(
        Arrays.stream(years).sum() / years.length, at(sorted, TAIL), at(sorted, 1 - TAIL));
  }

  private static double at(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (sorted[above] - sorted[below]) * (place - below);
  }

  /**
   * {@return the same figure in another unit}
   *
   * @param factor zero or more; dimensionless
   * @throws IllegalArgumentException when it is negative
   */
  public Spread times(double factor) {
    Require.between("factor", factor, 0, Double.MAX_VALUE);
    return new Spread(mean * factor, low * factor, high * factor);
  }

  /** {@return whether the ends lie so near, within 2 % of the mean, that they need no word} */
  public boolean isNarrow() {
    return high - low < NARROW * Math.abs(mean);
  }
}

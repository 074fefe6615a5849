package io.github.brinewright.simulation;

import java.util.Arrays;

/**
 * A figure over many simulated years.
 *
 * @param mean of all years
 * @param low that 5 % of the years lie below
 * @param high that 5 % of the years lie above
 */
public record Spread(double mean, double low, double high) {
  private static final double TAIL = 0.05;

  static Spread of(double[] years) {
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

  /** The same figure in another unit. */
  public Spread times(double factor) {
    return new Spread(mean * factor, low * factor, high * factor);
  }
}

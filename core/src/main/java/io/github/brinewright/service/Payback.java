package io.github.brinewright.service;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Years after which what is spent has come back: price ÷ what is saved a year, at today's prices.
 * Where nothing is saved it never does. Source: quotient of the figures named.
 *
 * @param years at the figures as stated; empty where it never comes
 * @param low years that 5 % of the draws stay below; empty where it never comes
 * @param high years that 5 % of the draws exceed; empty where it never comes in so many of them
 */
public record Payback(OptionalDouble years, OptionalDouble low, OptionalDouble high) {
  private static final double TAIL = 0.05;

  /** Of a price and what is saved a year, as stated and in each draw, in one currency. */
  static Payback of(double price, double saved, double[] drawn) {
    double[] sorted = Arrays.stream(drawn).map(each -> years(price, each)).sorted().toArray();
    double middle = years(price, saved);
    double low = Math.min(middle, sorted[place(sorted, TAIL)]);
    double high = Math.max(middle, sorted[place(sorted, 1 - TAIL)]);
    return new Payback(finite(middle), finite(low), finite(high));
  }

  private static double years(double price, double saved) {
    if (price <= 0) {
      return saved > 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    return saved <= 0 ? Double.POSITIVE_INFINITY : price / saved;
  }

  private static int place(double[] sorted, double share) {
    return (int) Math.round(share * (sorted.length - 1));
  }

  private static OptionalDouble finite(double years) {
    return Double.isInfinite(years) ? OptionalDouble.empty() : OptionalDouble.of(years);
  }

  /** {@return whether it never comes, at the figures as stated} */
  public boolean never() {
    return years.isEmpty();
  }

  /**
   * {@return whether it has come, at the figures as stated, within some years}
   *
   * @param most years, zero or more
   */
  public boolean within(double most) {
    return years.isPresent() && years.getAsDouble() <= most;
  }
}

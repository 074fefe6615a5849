package io.github.brinewright.service;

import io.github.brinewright.quantity.Require;
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
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /**
   * @param years at the figures as stated
   * @param low years that 5 % of the draws stay below
   * @param high years that 5 % of the draws exceed
   * @throws IllegalArgumentException when one is negative, or they do not rise from low to high
   */
  public Payback {
    Require.between("low end of a payback in years", or(low), 0, or(years));
    Require.between("high end of a payback in years", or(high), or(years), NEVER);
  }

  /** Of a price and what is saved a year, as stated and in each draw, in one currency. */
  static Payback of(double price, double saved, double[] drawn) {
    double[] sorted = Arrays.stream(drawn).map(each -> years(price, each)).sorted().toArray();
    double middle = years(price, saved);
    double low = Math.min(middle, sorted[place(sorted, TAIL)]);
    double high = Math.max(middle, sorted[place(sorted, 1 - TAIL)]);
    return new Payback(finite(middle), finite(low), finite(high));
  }

  private static double or(OptionalDouble years) {
    return years.orElse(NEVER);
  }

  private static double years(double price, double saved) {
    return saved <= 0 ? NEVER : price / saved;
  }

  private static int place(double[] sorted, double share) {
    return (int) Math.round(share * (sorted.length - 1));
  }

  private static OptionalDouble finite(double years) {
    return years == NEVER ? OptionalDouble.empty() : OptionalDouble.of(years);
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

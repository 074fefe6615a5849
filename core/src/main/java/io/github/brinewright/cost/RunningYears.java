package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.joda.money.Money;

/**
 * What yearly lines come to over some years, in today's money: each line × its modified uniform
 * present value. Source: NIST Handbook 135.
 *
 * @param lines of a year, of every kind, in one currency
 * @param escalation how prices rise
 * @param discountRate yearly discount rate of money itself, as a fraction; −0.5 to 1
 */
public record RunningYears(Map<CostKind, Money> lines, Escalation escalation, double discountRate) {
  private static final int FACTOR_DECIMALS = 6;

  /**
   * Keeps its own copy of {@code lines}.
   *
   * @param lines of a year, of every kind, in one currency
   * @param escalation how prices rise
   * @param discountRate yearly discount rate of money itself, as a fraction
   * @throws IllegalArgumentException when a line is missing, or the rate is outside its range
   */
  public RunningYears {
    if (lines.size() < CostKind.values().length) {
      throw new IllegalArgumentException(
          "a year has lines of " + lines.keySet() + "; give one of every kind of cost");
    }
    Require.between("discount rate", discountRate, -0.5, 1);
    lines = Collections.unmodifiableMap(new EnumMap<>(lines));
  }

  /**
   * {@return the present value of the first years}
   *
   * @param years 0 to {@value LifeCost#MOST_YEARS}
   * @throws IllegalArgumentException outside that range
   */
  public Money after(int years) {
    Require.between("years", years, 0, LifeCost.MOST_YEARS);
    return Money.total(lines.keySet().stream().map(kind -> of(kind, years)).toList());
  }

  /**
   * {@return the present value of one line over the first years}
   *
   * @param kind of the lines of a year
   * @param years 0 to 200
   * @throws IllegalArgumentException outside that range
   */
  public Money of(CostKind kind, int years) {
    return lines.get(kind).multipliedBy(factor(kind, years), RoundingMode.HALF_EVEN);
  }

  BigDecimal factor(CostKind kind, int years) {
    double factor = PresentValue.escalating(discountRate, kind.rise(escalation), years);
    return BigDecimal.valueOf(factor).setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN);
  }
}

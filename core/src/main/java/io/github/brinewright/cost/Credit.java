package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * A credit with level monthly payments at the end of each month.
 *
 * @param yearlyRate nominal yearly rate as a fraction; 0 to 0.6, with at most 8 decimals
 * @param months 1 to 240
 */
public record Credit(BigDecimal yearlyRate, int months) {
  private static final MathContext EXACT = MathContext.DECIMAL128;

  /** Below it the 34 digits reckoned with are no longer enough for a factor. */
  private static final double LEAST_RATE = 1e-12;

  /**
   * @param yearlyRate nominal yearly rate as a fraction; 0 to 0.6, with at most 8 decimals
   * @param months 1 to 240
   * @throws IllegalArgumentException outside the ranges above
   */
  public Credit {
    yearlyRate = Prices.rate("yearly rate of the credit", yearlyRate, "0.6");
    Require.between("months of the credit", months, 1, 240);
  }

  /**
   * {@return the level payment, amount × i ÷ (1 − (1 + i)^−n) with i = yearly rate ÷ 12, up to the
   * smallest unit of the currency} Example: 1,200.00 without interest in 12 months → 100.00.
   * Source: capital recovery factor, any text on engineering economics.
   *
   * @param amount financed; 0 to 10^12
   * @throws IllegalArgumentException outside that range
   */
  public Money payment(Money amount) {
    Prices.require("amount financed", amount, amount.getCurrencyUnit());
    BigDecimal rate = yearlyRate.divide(BigDecimal.valueOf(12), EXACT);
    return amount.multipliedBy(recovery(rate, months), RoundingMode.UP);
  }

  /**
   * {@return the capital recovery factor of {@code periods} payments at {@code rate} each;
   * dimensionless} Example: 18 %, 15 → 0.196403. Source: Panneerselvam, Engineering Economics,
   * example 3.6.
   *
   * @param rate of one period; 0 to 1, and 10^-12 or more when it is not zero
   * @param periods 1 to 1,200
   * @throws IllegalArgumentException outside these ranges
   */
  public static BigDecimal recovery(BigDecimal rate, int periods) {
    Require.between("rate of one period", rate.doubleValue(), 0, 1);
    Require.between("periods", periods, 1, 1_200);
    if (rate.signum() == 0) {
      return BigDecimal.ONE.divide(BigDecimal.valueOf(periods), EXACT);
    }
    Require.between("rate of one period other than zero", rate.doubleValue(), LEAST_RATE, 1);
    BigDecimal growth = BigDecimal.ONE.add(rate).pow(periods, EXACT);
    BigDecimal discount = BigDecimal.ONE.subtract(BigDecimal.ONE.divide(growth, EXACT));
    return rate.divide(discount, EXACT);
  }
}

package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * A credit with level monthly payments at the end of each month.
 *
 * @param yearlyRate nominal yearly rate as a fraction; 0 to 0.6
 * @param months 1 to 240
 */
public record Credit(BigDecimal yearlyRate, int months) {
  private static final MathContext EXACT = MathContext.DECIMAL128;

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public Credit {
    Require.between("yearly rate of the credit", yearlyRate.doubleValue(), 0, 0.6);
    Require.between("months of the credit", months, 1, 240);
  }

  /**
   * Level payment = amount × i ÷ (1 − (1 + i)^−n) with i = yearly rate ÷ 12, to the next cent up.
   * Example: 1,000,000 at 18 % a year in 15 yearly payments → 196,403 (the same formula by year).
   * Source: capital recovery factor, any text on engineering economics.
   */
  public Money payment(Money amount) {
    BigDecimal rate = yearlyRate.divide(BigDecimal.valueOf(12), EXACT);
    return amount.multipliedBy(recovery(rate, months), RoundingMode.UP);
  }

  /** Sum of all payments. */
  public Money totalPaid(Money amount) {
    return payment(amount).multipliedBy(months);
  }

  /**
   * Capital recovery factor of {@code periods} payments at {@code rate} each; dimensionless.
   * Example: 18 %, 15 → 0.196403. Source: Panneerselvam, Engineering Economics, example 3.6.
   *
   * @param rate of one period; zero or more
   * @param periods 1 or more
   */
  public static BigDecimal recovery(BigDecimal rate, int periods) {
    if (rate.signum() == 0) {
      return BigDecimal.ONE.divide(BigDecimal.valueOf(periods), EXACT);
    }
    BigDecimal growth = BigDecimal.ONE.add(rate).pow(periods, EXACT);
    BigDecimal discount = BigDecimal.ONE.subtract(BigDecimal.ONE.divide(growth, EXACT));
    return rate.divide(discount, EXACT);
  }
}

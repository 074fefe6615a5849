package io.github.brinewright.cost;

import io.github.brinewright.quantity.Bounds;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.joda.money.Money;

/**
 * The annual percentage rate of a credit that is advanced at once and paid back month by month, by
 * the actuarial method: amount = Σ payment ÷ ((1 + f·i) (1 + i)^t), rate = 12·i, where the first
 * payment comes after t whole months and the fraction f of one, and each other one a month later.
 * Source: 12 CFR 1026, Appendix J, (b)(8). Not for several advances, for payments that skip months
 * or come at other intervals, nor for a single payment, whose unit-period is its whole term: the
 * rate of one after other than a month differs from that of the regulation.
 */
public final class AnnualRate {
  /** Months from the advance to the first payment: 0.1 to 12. */
  public static final Bounds<Double> FIRST_PERIOD = Bounds.of(0.1, 12.0);

  private static final double HIGHEST_MONTHLY = 5;
  private static final int MONTHS = 12;
  private static final int DECIMALS = 6;

  private AnnualRate() {}

  /**
   * {@return the annual percentage rate as a fraction, to six decimals; zero where no more is paid
   * than was advanced} Example: 5,000.00, 24 payments of 230.00, the first after a month → 0.0969.
   *
   * @param financed the amount financed: what is advanced, less charges paid at once; more than 0
   * @param payments month by month, in the currency of the amount; at least one
   * @param firstPeriodMonths from the advance to the first payment; 0.1 to 12
   * @throws IllegalArgumentException outside these ranges
   */
  public static BigDecimal ofMonthly(
      Money financed, List<Money> payments, double firstPeriodMonths) {
    FIRST_PERIOD.require("months to the first payment", firstPeriodMonths);
    if (!financed.isPositive() || payments.isEmpty()) {
      throw new IllegalArgumentException(
          "an amount of " + financed + " and " + payments.size() + " payments have no rate");
    }
    double amount = financed.getAmount().doubleValue();
    double[] paid = payments.stream().mapToDouble(each -> each.getAmount().doubleValue()).toArray();
    if (worth(paid, firstPeriodMonths, 0) <= amount) {
      return BigDecimal.ZERO;
    }
    UnivariateFunction missing = rate -> worth(paid, firstPeriodMonths, rate) - amount;
    double monthly = new BrentSolver(1e-14).solve(1_000, missing, 0, HIGHEST_MONTHLY);
    return BigDecimal.valueOf(MONTHS * monthly).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }

  /** What payments are worth on the day of the advance at a monthly rate. */
  private static double worth(double[] payments, double first, double rate) {
    double whole = Math.floor(first);
    double fraction = first - whole;
    double worth = 0;
    for (int k = 0; k < payments.length; k++) {
      worth += payments[k] / ((1 + fraction * rate) * Math.pow(1 + rate, whole + k));
    }
    return worth;
  }
}

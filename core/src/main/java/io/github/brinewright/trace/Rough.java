package io.github.brinewright.trace;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * How a forecast is rounded, so that it looks no surer than it is: to halves below 10, to whole
 * numbers below 50, to 5 below 1,000, to 10 below 10,000, to 100 below 100,000, and then to 1,000.
 * So is a cost of running, of which a home may use two fifths more or less than others like it; the
 * step follows the number, so it holds for any currency. Prices, taxes and payments are never
 * rounded.
 */
public final class Rough {
  private static final double[] BELOW = {10, 50, 1_000, 10_000, 100_000};
  private static final double[] STEPS = {0.5, 1, 5, 10, 100, 1_000};

  /** Money has no halves. */
  private static final BigDecimal WHOLE_BELOW = BigDecimal.TEN;

  private Rough() {}

  /**
   * {@return the number to the step of its size, half a step upwards, with no decimals but a half}
   *
   * @param value finite, in the unit in which it is shown
   * @throws IllegalArgumentException when it is not finite
   */
  public static BigDecimal of(double value) {
    Require.between("forecast", value, -Double.MAX_VALUE, Double.MAX_VALUE);
    BigDecimal step = BigDecimal.valueOf(step(Math.abs(value)));
    BigDecimal rounded =
        BigDecimal.valueOf(value).divide(step, 0, RoundingMode.HALF_UP).multiply(step);
    BigDecimal bare = rounded.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }

  /**
   * {@return a cost to the step of its size, and to the whole unit of its currency}
   *
   * @param cost of running, or a sum with one in it
   */
  public static Money of(Money cost) {
    BigDecimal exact = cost.getAmount();
    BigDecimal rough =
        exact.abs().compareTo(WHOLE_BELOW) < 0
            ? exact.setScale(0, RoundingMode.HALF_UP)
            : of(exact.doubleValue());
    return Money.of(cost.getCurrencyUnit(), rough, RoundingMode.HALF_UP);
  }

  /**
   * {@return how far two costs are apart as they are printed: what a reader finds who takes one
   * from the other; zero where both are printed alike, never negative}
   *
   * @param one a cost
   * @param other a cost in the same currency
   */
  public static Money apart(Money one, Money other) {
    return of(one).minus(of(other)).abs();
  }

  /**
   * {@return whether two costs are printed alike, so that neither may be called the lower one}
   *
   * @param one a cost
   * @param other a cost in the same currency
   */
  public static boolean alike(Money one, Money other) {
    return apart(one, other).isZero();
  }

  private static double step(double size) {
    int place = 0;
    while (place < BELOW.length && size >= BELOW[place]) {
      place++;
    }
    return STEPS[place];
  }
}

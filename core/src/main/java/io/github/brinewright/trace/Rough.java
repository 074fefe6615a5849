package io.github.brinewright.trace;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How a forecast is rounded, so that it looks no surer than it is: to halves below 10, to whole
 * numbers below 50, to 5 below 1,000, to 10 below 10,000, to 100 below 100,000, and then to 1,000.
 */
public final class Rough {
  private static final double[] BELOW = {10, 50, 1_000, 10_000, 100_000};
  private static final double[] STEPS = {0.5, 1, 5, 10, 100, 1_000};

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

  private static double step(double size) {
    int place = 0;
    while (place < BELOW.length && size >= BELOW[place]) {
      place++;
    }
    return STEPS[place];
  }
}

package io.github.brinewright.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they leave the program. */
final class Numbers {
  private static final int DECIMALS = 4;

  private Numbers() {}

  /** At most four decimals, without trailing zeros. */
  static BigDecimal of(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    BigDecimal stripped = rounded.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/** Minutes as a control is set to them: with the decimals that they have, two at most. */
final class SetMinutes {
  private static final int MOST_DECIMALS = 2;

  private SetMinutes() {}

  /** With their unit. */
  static Figure figure(Duration time) {
    return Figure.of(time, decimals(time));
  }

  /** Without it. */
  static Figure number(Duration time) {
    return Figure.of(Minutes.of(time), decimals(time));
  }

  private static int decimals(Duration time) {
    BigDecimal bare =
        BigDecimal.valueOf(Minutes.of(time))
            .setScale(MOST_DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return Math.max(0, bare.scale());
  }
}

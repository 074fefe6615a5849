package io.github.brinewright.chart;

import io.github.brinewright.document.Canvas;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.layout.Box;
import java.util.function.DoubleFunction;

/** Round steps of an axis, and the lines at them. */
final class Ticks {
  private Ticks() {}

  /** Draws a hairline with its value at each step of a vertical axis that begins at zero. */
  static void lines(
      Canvas canvas,
      Box plot,
      double top,
      double step,
      DoubleFunction<String> axis,
      TextStyle style) {
    for (double value = 0; value <= top * 1.0001; value += step) {
      double y = plot.bottom() - plot.height() * value / top;
      String text = axis.apply(value);
      canvas.rule(plot.x(), y, plot.width(), 0.5, Ink.HAIRLINE);
      canvas.text(plot.x() - 6 - style.width(text), y + 3, text, style);
    }
  }

  /**
   * A step of 1, 2, 2.5 or 5 times a power of ten that divides a height into about {@code parts};
   * 2.5 itself is passed over, since an axis of whole numbers could not write it.
   */
  static double step(double height, int parts) {
    double rough = Math.max(height, 1e-9) / parts;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 2.5, 5}) {
      if (factor * power >= rough && (factor != 2.5 || power >= 10)) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}

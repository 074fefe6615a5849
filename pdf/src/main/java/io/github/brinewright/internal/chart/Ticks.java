package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.function.DoubleFunction;

/** Round steps of an axis from zero, and what stands at them. */
final class Ticks {
  private Ticks() {}

  /**
   * A vertical axis that ends on a step.
   *
   * @param step from line to line
   * @param top value at its end
   */
  record Scale(double step, double top) {
    /** The scale that a highest value fits below, of about four steps. */
    static Scale upTo(double highest) {
      double step = Ticks.step(highest, 4);
      return new Scale(step, Math.max(step, step * Math.ceil(highest / step)));
    }

    /** Where a value stands on the page. */
    double y(double value, Box plot) {
      return plot.bottom() - plot.height() * value / top;
    }
  }

  /** Draws a hairline with its value at each step of a vertical axis. */
  static void lines(
      Pad canvas, Box plot, Scale scale, DoubleFunction<String> axis, TextStyle style) {
    for (double value = 0; value <= scale.top() * 1.0001; value += scale.step()) {
      double y = scale.y(value, plot);
      String text = axis.apply(value);
      canvas.rule(plot.x(), y, plot.width(), 0.5, Ink.HAIRLINE);
      canvas.text(plot.x() - 6 - style.width(text), y + 3, text, style);
    }
  }

  /** Writes a value of the horizontal axis, centred at its place. */
  static void below(Pad canvas, double x, double baseline, String text, TextStyle style) {
    canvas.text(x - style.width(text) / 2, baseline, text, style);
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

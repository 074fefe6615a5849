package io.github.brinewright.chart;

import io.github.brinewright.document.Canvas;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.layout.Box;
import io.github.brinewright.layout.Drawing;
import java.util.List;

/**
 * Horizontal bars from zero, each with the range that it moves in. The marked bar is filled, the
 * others are outlined, so that it reads without colour.
 *
 * @param bars from top to bottom
 */
public record RangeBars(List<Bar> bars) implements Drawing.Artist {
  /**
   * One bar.
   *
   * @param name on its left
   * @param value its length
   * @param low end of its range
   * @param high end of its range
   * @param label on its right
   * @param ink its colour
   * @param filled whether it is the marked one
   */
  public record Bar(
      String name, double value, double low, double high, String label, Ink ink, boolean filled) {}

  /** Height of each bar with its room, in points. */
  public static final double EACH = 19;

  private static final double THICK = 10;
  private static final double NAMES = 118;
  private static final double LABELS = 62;

  @Override
  public void draw(Canvas canvas, Box frame) {
    double longest =
        bars.stream().mapToDouble(bar -> Math.max(bar.value(), bar.high())).max().orElse(1);
    double scale = (frame.width() - NAMES - LABELS) / Math.max(longest, 1e-9);
    for (int i = 0; i < bars.size(); i++) {
      draw(canvas, bars.get(i), frame.x(), frame.y() + i * EACH, scale);
    }
  }

  private static void draw(Canvas canvas, Bar bar, double x, double top, double scale) {
    TextStyle style = bar.filled() ? TextStyle.SMALL.bold() : TextStyle.SMALL;
    double left = x + NAMES;
    double right = left + bar.value() * scale;
    canvas.text(x, top + THICK - 1, style.fitting(bar.name(), NAMES - 8), style);
    if (bar.filled()) {
      canvas.fill(left, top, right - left, THICK, bar.ink());
    } else {
      outline(canvas, new Box(left, top, right - left, THICK), bar.ink());
    }
    double middle = top + THICK / 2;
    Ink whisker = Ink.TEXT;
    canvas.rule(left + bar.low() * scale, middle, (bar.high() - bar.low()) * scale, 1.2, whisker);
    tick(canvas, left + bar.low() * scale, middle, whisker);
    tick(canvas, left + bar.high() * scale, middle, whisker);
    double end = Math.max(right, left + bar.high() * scale);
    canvas.text(end + 6, top + THICK - 1, bar.label(), style);
  }

  private static void tick(Canvas canvas, double x, double y, Ink ink) {
    canvas.line(new Canvas.Point(x, y - 3.5), new Canvas.Point(x, y + 3.5), 1.2, ink);
  }

  private static void outline(Canvas canvas, Box box, Ink ink) {
    canvas.path(box.outline(), 0.9, ink, Canvas.Stroke.SOLID);
  }
}

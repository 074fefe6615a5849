package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.List;

/**
 * Horizontal bars whose parts add up, told apart by their lightness and a legend in the same order,
 * so that they read in black and white.
 *
 * @param bars from top to bottom
 * @param parts names of the parts, from left to right; five at most
 * @param accent colour of the first part
 */
public record StackedBars(List<Bar> bars, List<String> parts, Ink accent) implements Artist {
  /**
   * One bar.
   *
   * @param name on its left
   * @param values of its parts
   * @param label on its right
   * @param marked whether it stands out
   */
  public record Bar(String name, List<Double> values, String label, boolean marked) {
    double total() {
      return values.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  private static final double EACH = 17;
  private static final double THICK = 10;
  private static final double SWATCH = 9;
  private static final double LEGEND = 20;
  private static final double THINNEST = 0.4;

  @Override
  public double height() {
    return bars.size() * EACH + LEGEND;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    double longest = bars.stream().mapToDouble(Bar::total).max().orElse(1);
    double scale = (frame.width() - Rows.NAMES - Rows.LABELS) / Math.max(longest, 1e-9);
    for (int i = 0; i < bars.size(); i++) {
      draw(canvas, bars.get(i), frame.x(), frame.y() + i * EACH, scale);
    }
    legend(canvas, frame.x() + Rows.NAMES, frame.y() + bars.size() * EACH + 6);
  }

  private void draw(Pad canvas, Bar bar, double x, double top, double scale) {
    Rows.name(canvas, x, top + THICK - 1, bar.name(), bar.marked());
    double left = x + Rows.NAMES;
    for (int i = 0; i < bar.values().size(); i++) {
      double width = bar.values().get(i) * scale;
      if (width > THINNEST) {
        tint(i).fill(canvas, new Box(left, top, width, THICK));
      }
      left += width;
    }
    Rows.label(canvas, left, top + THICK - 1, bar.label(), bar.marked());
  }

  private Tint tint(int part) {
    List<Tint> tints = Tint.five(accent);
    return tints.get(part % tints.size());
  }

  private void legend(Pad canvas, double x, double top) {
    double left = x;
    for (int i = 0; i < parts.size(); i++) {
      tint(i).fill(canvas, new Box(left, top, SWATCH, SWATCH));
      canvas.text(left + SWATCH + 4, top + SWATCH - 1.5, parts.get(i), TextStyle.TINY);
      left += SWATCH + 4 + TextStyle.TINY.width(parts.get(i)) + 14;
    }
  }
}

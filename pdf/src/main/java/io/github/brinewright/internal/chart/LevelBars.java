package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import java.util.List;

/**
 * Bars of one amount with name and figure beside each; the one that stands out is dark, the others
 * are light with an edge.
 *
 * @param bars from top to bottom
 * @param accent colour of the one that stands out
 */
public record LevelBars(List<Bar> bars, Ink accent) implements Artist {
  /**
   * One bar.
   *
   * @param name on its left
   * @param share of the longest; 0 to 1
   * @param label on its right
   * @param marked whether it stands out
   */
  public record Bar(String name, double share, String label, boolean marked) {}

  private static final double EACH = 17;
  private static final double THICK = 11;
  private static final double LEAST = 1.5;
  private static final double LABELS = 128;

  @Override
  public double height() {
    return bars.size() * EACH;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    double longest = frame.width() - Rows.NAMES - LABELS;
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      double top = frame.y() + i * EACH;
      double width = Math.max(LEAST, bar.share() * longest);
      Box box = new Box(frame.x() + Rows.NAMES, top, width, THICK);
      Rows.name(canvas, frame.x(), top + THICK - 2, bar.name(), bar.marked());
      (bar.marked() ? Tint.accent(accent) : Tint.LIGHT).fill(canvas, box);
      Rows.label(canvas, box.right(), top + THICK - 2, bar.label(), bar.marked());
    }
  }
}

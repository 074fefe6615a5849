package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.List;

/**
 * The days of a year as rows of marks, one row for each way of doing. A day with several events has
 * a taller mark. Rows are told apart by their names, not by colour.
 *
 * @param rows from top to bottom, each of as many days
 * @param axis what the numbers below count, as twelfths of the year
 */
public record DayMarks(List<Row> rows, String axis) implements Artist {
  /**
   * One row.
   *
   * @param name on its left
   * @param events of each day
   * @param label on its right
   * @param ink of its marks
   * @param marked whether it stands out
   */
  public record Row(String name, List<Integer> events, String label, Ink ink, boolean marked) {}

  private static final double EACH = 20;
  private static final double AXIS = 16;
  private static final double TALL = 8;
  private static final double MORE = 3;
  private static final int MONTHS = 12;
  private static final TextStyle LABEL = TextStyle.TINY.in(Ink.QUIET);

  @Override
  public double height() {
    return rows.size() * EACH + AXIS;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    Box plot = frame.inset(Rows.NAMES, 0, Rows.LABELS, AXIS);
    months(canvas, plot, frame.x());
    for (int i = 0; i < rows.size(); i++) {
      draw(canvas, rows.get(i), frame.x(), plot, frame.y() + (i + 1) * EACH - 5);
    }
  }

  private void months(Pad canvas, Box plot, double left) {
    for (int month = 0; month <= MONTHS; month++) {
      double x = plot.x() + plot.width() * month / MONTHS;
      canvas.line(
          new Canvas.Point(x, plot.y() + 2), new Canvas.Point(x, plot.bottom()), 0.5, Ink.HAIRLINE);
      if (month < MONTHS) {
        double middle = x + plot.width() / MONTHS / 2;
        Ticks.below(canvas, middle, plot.bottom() + 9, String.valueOf(month + 1), LABEL);
      }
    }
    canvas.text(left, plot.bottom() + 9, axis, LABEL);
  }

  private static void draw(Pad canvas, Row row, double left, Box plot, double base) {
    Rows.name(canvas, left, base, row.name(), row.marked());
    canvas.rule(plot.x(), base, plot.width(), 0.5, Ink.QUIET);
    double day = plot.width() / row.events().size();
    for (int i = 0; i < row.events().size(); i++) {
      int events = row.events().get(i);
      if (events > 0) {
        double x = plot.x() + (i + 0.5) * day;
        double top = base - Math.min(EACH - 6, TALL + (events - 1) * MORE);
        canvas.line(new Canvas.Point(x, base), new Canvas.Point(x, top), 0.9, row.ink());
      }
    }
    Rows.label(canvas, plot.right(), base, row.label(), row.marked());
  }
}

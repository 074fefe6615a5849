package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.List;

/**
 * A scale of hardness with the home's own mark; the class it lies in is tinted. Harder water than
 * the scale has is marked at its end.
 *
 * @param names of the classes from soft to very hard
 * @param limits between them, in the unit of {@code value}
 * @param ends the limits as written
 * @param own number of the class that the home lies in
 * @param value of the home
 * @param highest end of the scale
 * @param mark text at the mark
 * @param accent colour of the mark
 */
public record HardnessScale(
    List<String> names,
    List<Double> limits,
    List<String> ends,
    int own,
    double value,
    double highest,
    String mark,
    Ink accent)
    implements Artist {
  private static final double HEIGHT = 53;

  private static final double BAR_TOP = 22;
  private static final double BAR_HEIGHT = 7;
  private static final TextStyle LABEL = TextStyle.SMALL.in(Ink.QUIET);

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    double from = 0;
    for (int i = 0; i < names.size(); i++) {
      double to = i < limits.size() ? limits.get(i) : highest;
      double left = x(from, frame);
      double width = x(to, frame) - left;
      Box part = new Box(left, frame.y() + BAR_TOP, width, BAR_HEIGHT);
      (i == own ? Tint.LIGHT : Tint.OPEN).fill(canvas, part);
      if (LABEL.width(names.get(i)) < width) {
        canvas.text(left, frame.y() + BAR_TOP + BAR_HEIGHT + 22, names.get(i), LABEL);
      }
      if (i < limits.size()) {
        Ticks.below(
            canvas, left + width, frame.y() + BAR_TOP + BAR_HEIGHT + 10, ends.get(i), LABEL);
      }
      from = to;
    }
    drawMark(canvas, frame);
  }

  private void drawMark(Pad canvas, Box frame) {
    double at = x(Math.min(value, highest), frame);
    TextStyle bold = TextStyle.SMALL.bold().in(accent);
    double half = bold.width(mark) / 2;
    double left = Math.max(frame.x(), Math.min(at - half, frame.right() - 2 * half));
    canvas.text(left, frame.y() + 9, mark, bold);
    canvas.fill(at - 1.25, frame.y() + 13, 2.5, BAR_TOP + BAR_HEIGHT - 9, accent);
    if (value > highest) {
      canvas.text(at + 3, frame.y() + BAR_TOP + BAR_HEIGHT, "›", bold);
    }
  }

  private double x(double of, Box frame) {
    return frame.x() + frame.width() * of / highest;
  }
}

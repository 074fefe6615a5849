package io.github.brinewright.chart;

import io.github.brinewright.document.Canvas;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.layout.Box;
import io.github.brinewright.layout.Drawing;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A curve through its range with points on it: the chosen one filled, the others outlined.
 *
 * @param curve by rising x
 * @param points on the curve
 * @param xAxis writes a value of the horizontal axis
 * @param yAxis writes a value of the vertical axis
 * @param ink of the chosen point
 */
public record CapacityCurve(
    List<Canvas.Point> curve,
    List<Marked> points,
    DoubleFunction<String> xAxis,
    DoubleFunction<String> yAxis,
    Ink ink)
    implements Drawing.Artist {
  /**
   * A point of the curve.
   *
   * @param at its values
   * @param chosen whether it is the chosen one
   */
  public record Marked(Canvas.Point at, boolean chosen) {}

  private static final double HEIGHT = 118;

  private static final double LEFT = 48;
  private static final double BOTTOM = 20;
  private static final double SIDE = 6;
  private static final TextStyle LABEL = TextStyle.TINY.in(Ink.QUIET);

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Canvas canvas, Box frame) {
    Box plot =
        new Box(
            frame.x() + LEFT,
            frame.y() + 8,
            frame.width() - LEFT - 40,
            frame.height() - BOTTOM - 8);
    double highest = curve.get(curve.size() - 1).y();
    double step = Ticks.step(highest, 4);
    double top = step * Math.ceil(highest / step);
    double right = curve.get(curve.size() - 1).x();
    Ticks.lines(canvas, plot, top, step, yAxis, LABEL);
    double xStep = Ticks.step(right, 6);
    for (double x = 0; x <= right * 1.0001; x += xStep) {
      String text = xAxis.apply(x);
      canvas.text(
          plot.x() + plot.width() * x / right - LABEL.width(text) / 2,
          plot.bottom() + 12,
          text,
          LABEL);
    }
    canvas.path(
        curve.stream().map(point -> place(point, plot, right, top)).toList(),
        1.4,
        Ink.TEXT,
        Canvas.Stroke.SOLID);
    points.forEach(point -> mark(canvas, point, place(point.at(), plot, right, top)));
  }

  private static Canvas.Point place(Canvas.Point value, Box plot, double right, double top) {
    return new Canvas.Point(
        plot.x() + plot.width() * value.x() / right,
        plot.bottom() - plot.height() * value.y() / top);
  }

  private void mark(Canvas canvas, Marked point, Canvas.Point at) {
    double half = SIDE / 2;
    if (point.chosen()) {
      canvas.fill(at.x() - half, at.y() - half, SIDE, SIDE, ink);
    } else {
      canvas.fill(at.x() - half, at.y() - half, SIDE, SIDE, Ink.PAPER);
      canvas.path(
          new Box(at.x() - half, at.y() - half, SIDE, SIDE).outline(),
          1,
          Ink.TEXT,
          Canvas.Stroke.SOLID);
    }
  }
}

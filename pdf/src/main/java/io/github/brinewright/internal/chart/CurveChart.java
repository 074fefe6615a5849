package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
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
public record CurveChart(
    List<Canvas.Point> curve,
    List<Marked> points,
    DoubleFunction<String> xAxis,
    DoubleFunction<String> yAxis,
    Ink ink)
    implements Artist {
  /**
   * A point of the curve.
   *
   * @param at its values
   * @param chosen whether it is the chosen one
   */
  public record Marked(Canvas.Point at, boolean chosen) {}

  private static final double HEIGHT = 118;

  private static final double LEFT = 48;
  private static final double TOP = 8;
  private static final double RIGHT = 40;
  private static final double BOTTOM = 20;
  private static final double SIDE = 6;
  private static final TextStyle LABEL = TextStyle.TINY.in(Ink.QUIET);

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    Box plot = frame.inset(LEFT, TOP, RIGHT, BOTTOM);
    Ticks.Scale scale = Ticks.Scale.upTo(end().y());
    Ticks.lines(canvas, plot, scale, yAxis, LABEL);
    double xStep = Ticks.step(end().x(), 6);
    for (double x = 0; x <= end().x() * 1.0001; x += xStep) {
      Ticks.below(canvas, x(x, plot), plot.bottom() + 12, xAxis.apply(x), LABEL);
    }
    canvas.path(
        curve.stream().map(point -> place(point, plot, scale)).toList(),
        1.4,
        Ink.TEXT,
        Canvas.Stroke.SOLID);
    points.forEach(point -> mark(canvas, point, place(point.at(), plot, scale)));
  }

  private Canvas.Point end() {
    return curve.get(curve.size() - 1);
  }

  private double x(double value, Box plot) {
    return plot.x() + plot.width() * value / end().x();
  }

  private Canvas.Point place(Canvas.Point value, Box plot, Ticks.Scale scale) {
    return new Canvas.Point(x(value.x(), plot), scale.y(value.y(), plot));
  }

  private void mark(Pad canvas, Marked point, Canvas.Point at) {
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

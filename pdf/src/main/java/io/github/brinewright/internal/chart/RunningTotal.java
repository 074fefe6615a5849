package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Lines of a sum that grows year by year. Series are told apart by stroke and by the name at their
 * end, so it reads without colour.
 *
 * @param series one line each; three at most have a stroke of their own
 * @param axis writes a value at the axis
 * @param xName what the horizontal axis counts
 */
public record RunningTotal(List<Series> series, DoubleFunction<String> axis, String xName)
    implements Artist {
  /**
   * One line.
   *
   * @param name at its end
   * @param values one for each year, from year 0
   * @param stroke how it is drawn
   * @param ink its colour
   */
  public record Series(String name, List<Double> values, Canvas.Stroke stroke, Ink ink) {
    double last() {
      return values.get(values.size() - 1);
    }
  }

  private static final double HEIGHT = 140;
  private static final double LEFT = 44;
  private static final double RIGHT = 132;
  private static final double TOP = 6;
  private static final double BOTTOM = 24;
  private static final double LABEL_STEP = 11.5;
  private static final TextStyle LABEL = TextStyle.SMALL.in(Ink.QUIET);

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    Box plot = frame.inset(LEFT, TOP, RIGHT, BOTTOM);
    Ticks.Scale scale = Ticks.Scale.upTo(series.stream().mapToDouble(Series::last).max().orElse(1));
    drawAxes(canvas, plot, scale);
    series.forEach(one -> drawLine(canvas, plot, one, scale));
    drawNames(canvas, plot, scale);
  }

  private void drawAxes(Pad canvas, Box plot, Ticks.Scale scale) {
    Ticks.lines(canvas, plot, scale, axis, LABEL);
    int years = series.get(0).values().size() - 1;
    int every = years > 12 ? 5 : years > 6 ? 2 : 1;
    for (int year = 0; year <= years; year += every) {
      Ticks.below(canvas, x(year, plot, years), plot.bottom() + 12, String.valueOf(year), LABEL);
    }
    canvas.text(plot.right() + 8, plot.bottom() + 12, xName, LABEL);
  }

  private static void drawLine(Pad canvas, Box plot, Series one, Ticks.Scale scale) {
    List<Canvas.Point> points = new ArrayList<>();
    int years = one.values().size() - 1;
    for (int year = 0; year <= years; year++) {
      points.add(new Canvas.Point(x(year, plot, years), scale.y(one.values().get(year), plot)));
    }
    canvas.path(points, one.stroke() == Canvas.Stroke.SOLID ? 2 : 1.4, one.ink(), one.stroke());
  }

  /** Puts the names beside the ends of their lines, moved apart where they would overlap. */
  private void drawNames(Pad canvas, Box plot, Ticks.Scale scale) {
    double lowest = Double.NEGATIVE_INFINITY;
    List<Series> fromTop =
        series.stream().sorted(Comparator.comparingDouble(Series::last).reversed()).toList();
    for (Series one : fromTop) {
      double y = Math.max(scale.y(one.last(), plot) + 3, lowest + LABEL_STEP);
      TextStyle style =
          one.stroke() == Canvas.Stroke.SOLID ? TextStyle.SMALL.bold() : TextStyle.SMALL;
      canvas.text(plot.right() + 8, y, style.fitting(one.name(), RIGHT - 8), style.in(one.ink()));
      lowest = y;
    }
  }

  private static double x(int year, Box plot, int years) {
    return plot.x() + plot.width() * year / years;
  }
}

package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * Vessels and a brine tank to scale beside a door.
 *
 * @param vessels how many; 1 or more
 * @param vessel width and height of each, in inches
 * @param tank width and height of the brine tank in inches; of no width where it is not known
 * @param door what the door is called
 * @param above written above the vessels: how high they stand
 * @param below written below all: how wide they are
 * @param accent colour of what is sold
 */
public record UnitBesideDoor(
    int vessels, Size vessel, Size tank, String door, String above, String below, Ink accent)
    implements Artist {
  /**
   * How wide and high something is.
   *
   * @param wide in inches
   * @param high in inches
   */
  public record Size(double wide, double high) {}

  /** A usual inner door: common practice. */
  private static final Size DOOR = new Size(32, 80);

  /** A control valve on a vessel: common practice. */
  private static final double VALVE = 7;

  private static final double HEIGHT = 106;
  private static final double BELOW = 14;
  private static final double GAP = 3;
  private static final TextStyle LABEL = TextStyle.TINY.in(Ink.QUIET);

  @Override
  public double height() {
    return HEIGHT;
  }

  private double scale() {
    double highest = Math.max(DOOR.high(), Math.max(vessel.high() + VALVE, tank.high()));
    return (HEIGHT - BELOW - 4) / highest;
  }

  @Override
  public void draw(Pad canvas, Box frame) {
    double floor = frame.bottom() - BELOW;
    double scale = scale();
    double left = frame.x() + door(canvas, frame.x(), floor, scale) + 14;
    double right = left;
    for (int i = 0; i < vessels; i++) {
      right = vessel(canvas, right, floor, scale) + GAP * scale;
    }
    if (tank.wide() > 0) {
      Box box =
          new Box(right, floor - tank.high() * scale, tank.wide() * scale, tank.high() * scale);
      Tint.LIGHT.fill(canvas, box);
      canvas.rule(box.x() - 1, box.y(), box.width() + 2, 1.6, Ink.QUIET);
      right = box.right();
    }
    canvas.rule(frame.x(), floor, right - frame.x() + 10, 0.8, Ink.QUIET);
    double top = floor - (vessel.high() + VALVE) * scale;
    canvas.text(left, top - 4, above, LABEL);
    canvas.text(left, floor + 10, below, LABEL);
  }

  private double door(Pad canvas, double x, double floor, double scale) {
    double wide = DOOR.wide() * scale;
    double high = DOOR.high() * scale;
    Box box = new Box(x, floor - high, wide, high);
    canvas.path(box.outline(), 0.9, Ink.QUIET, Canvas.Stroke.SOLID);
    Box knob = new Box(x + wide - 6, floor - 37 * scale, 2.4, 2.4);
    canvas.path(knob.round(), 0.8, Ink.QUIET, Canvas.Stroke.SOLID);
    canvas.text(x, floor + 10, LABEL.fitting(door, wide + 12), LABEL);
    return wide;
  }

  /** A vessel with round ends and its valve; returns its right edge. */
  private double vessel(Pad canvas, double x, double floor, double scale) {
    double wide = vessel.wide() * scale;
    double high = vessel.high() * scale;
    Box body = new Box(x, floor - high, wide, high);
    List<Canvas.Point> outline = rounded(body);
    canvas.path(outline, 1.4, accent, Canvas.Stroke.SOLID);
    double valve = wide * 0.62;
    Tint.accent(accent)
        .fill(
            canvas,
            new Box(x + (wide - valve) / 2, body.y() - VALVE * scale, valve, VALVE * scale));
    return x + wide;
  }

  private static List<Canvas.Point> rounded(Box box) {
    double r = box.width() / 2;
    List<Canvas.Point> points = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      double angle = Math.PI + Math.PI * i / 12;
      points.add(
          new Canvas.Point(box.x() + r + r * Math.cos(angle), box.y() + r + r * Math.sin(angle)));
    }
    points.add(new Canvas.Point(box.right(), box.bottom()));
    points.add(new Canvas.Point(box.x(), box.bottom()));
    points.add(points.get(0));
    return points;
  }
}

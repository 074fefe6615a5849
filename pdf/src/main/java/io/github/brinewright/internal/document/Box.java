package io.github.brinewright.internal.document;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A rectangle of a page, in points from the top left corner.
 *
 * @param x left edge
 * @param y top edge
 * @param width in points
 * @param height in points
 */
public record Box(double x, double y, double width, double height) {
  private static final int ROUNDNESS = 24;

  /** Right edge. */
  public double right() {
    return x + width;
  }

  /** The corners in order, back to the first. */
  public List<Canvas.Point> outline() {
    return List.of(
        new Canvas.Point(x, y),
        new Canvas.Point(right(), y),
        new Canvas.Point(right(), bottom()),
        new Canvas.Point(x, bottom()),
        new Canvas.Point(x, y));
  }

  /** Points around the ellipse that fits it, back to the first. */
  public List<Canvas.Point> round() {
    return IntStream.rangeClosed(0, ROUNDNESS)
        .mapToObj(i -> 2 * Math.PI * i / ROUNDNESS)
        .map(
            angle ->
                new Canvas.Point(
                    x + width / 2 * (1 + Math.cos(angle)), y + height / 2 * (1 + Math.sin(angle))))
        .toList();
  }

  /** What is left inside margins. */
  public Box inset(double left, double top, double right, double bottom) {
    return new Box(x + left, y + top, width - left - right, height - top - bottom);
  }

  /** Bottom edge. */
  public double bottom() {
    return y + height;
  }
}

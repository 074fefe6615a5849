package io.github.brinewright.layout;

/**
 * A rectangle of a page, in points from the top left corner.
 *
 * @param x left edge
 * @param y top edge
 * @param width in points
 * @param height in points
 */
public record Box(double x, double y, double width, double height) {
  /** Right edge. */
  public double right() {
    return x + width;
  }

  /** Bottom edge. */
  public double bottom() {
    return y + height;
  }
}

package io.github.brinewright.internal.layout;

/**
 * A page and the room for text on it, in points.
 *
 * @param width of the page
 * @param height of the page
 * @param text where text may stand
 */
public record PageFrame(double width, double height, Box text) {
  private static final double SIDE = 56;
  private static final double TOP = 58;
  private static final double BOTTOM = 64;

  /** US Letter. */
  public static PageFrame letter() {
    return of(612, 792);
  }

  /** ISO A4. */
  public static PageFrame a4() {
    return of(595.28, 841.89);
  }

  private static PageFrame of(double width, double height) {
    return new PageFrame(
        width, height, new Box(SIDE, TOP, width - 2 * SIDE, height - TOP - BOTTOM));
  }
}

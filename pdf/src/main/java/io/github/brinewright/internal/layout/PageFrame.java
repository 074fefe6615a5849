package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.job.Dealer;

/**
 * A page and the room for text on it, in points.
 *
 * @param width of the page
 * @param height of the page
 * @param text where text may stand
 */
record PageFrame(double width, double height, Box text) {
  private static final double SIDE = 56;
  private static final double TOP = 58;
  private static final double BOTTOM = 64;

  /** The frame of a paper. */
  static PageFrame of(Dealer.Paper paper) {
    return paper == Dealer.Paper.A4 ? a4() : letter();
  }

  /** US Letter. */
  static PageFrame letter() {
    return of(612, 792);
  }

  /** ISO A4. */
  static PageFrame a4() {
    return of(595.28, 841.89);
  }

  private static PageFrame of(double width, double height) {
    return new PageFrame(
        width, height, new Box(SIDE, TOP, width - 2 * SIDE, height - TOP - BOTTOM));
  }
}

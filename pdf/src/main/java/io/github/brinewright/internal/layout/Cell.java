package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.TextStyle;

/**
 * One cell of a table.
 *
 * @param text to write
 * @param style how it looks
 * @param align to which side
 */
record Cell(String text, TextStyle style, Align align) {
  /** Sides. */
  enum Align {
    LEFT,
    RIGHT
  }

  /** A cell to the left. */
  static Cell of(String text, TextStyle style) {
    return new Cell(text, style, Align.LEFT);
  }

  /** The same, to the right. */
  Cell right() {
    return new Cell(text, style, Align.RIGHT);
  }

  /** Its width on one line. */
  double naturalWidth() {
    return style.width(style.weight().typeface().printable(text));
  }
}

package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.TextStyle;
import java.util.Arrays;

/**
 * One cell of a table.
 *
 * @param text to write
 * @param style how it looks
 * @param align to which side
 * @param marked whether a rule below marks it
 */
record Cell(String text, TextStyle style, Align align, boolean marked) {
  /** Sides. */
  enum Align {
    LEFT,
    RIGHT
  }

  /** A cell to the left. */
  static Cell of(String text, TextStyle style) {
    return new Cell(text, style, Align.LEFT, false);
  }

  /** The same, to the right. */
  Cell right() {
    return new Cell(text, style, Align.RIGHT, marked);
  }

  /** The same, marked by a rule below. */
  Cell withRule() {
    return new Cell(text, style, align, true);
  }

  /** Its width on one line. */
  double naturalWidth() {
    return style.width(style.weight().typeface().printable(text));
  }

  /** The width of its longest word, which is the least that it can do with. */
  double longestWord() {
    String printable = style.weight().typeface().printable(text);
    return Arrays.stream(printable.split(" ")).mapToDouble(style::width).max().orElse(0);
  }
}

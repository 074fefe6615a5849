package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.TextStyle;

/**
 * One cell of a table.
 *
 * @param text to write
 * @param style how it looks
 * @param align to which side
 * @param header whether it heads its row
 */
public record Cell(String text, TextStyle style, Align align, boolean header) {
  /** Sides. */
  public enum Align {
    LEFT,
    RIGHT
  }

  /** A cell of data, to the left. */
  public static Cell of(String text, TextStyle style) {
    return new Cell(text, style, Align.LEFT, false);
  }

  /** The same, to the right. */
  public Cell right() {
    return new Cell(text, style, Align.RIGHT, header);
  }

  /** The same as a header. */
  public Cell heading() {
    return new Cell(text, style, align, true);
  }
}

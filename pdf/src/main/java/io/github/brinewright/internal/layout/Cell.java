package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.TextStyle;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One cell of a table.
 *
 * @param text to write
 * @param style how it looks
 * @param align to which side
 * @param marked whether a rule below marks it
 * @param field to tick or to mark before the text; null for none
 */
record Cell(String text, TextStyle style, Align align, boolean marked, @Nullable Field field) {
  /** Room that a field before the text takes, in points. */
  private static final double FIELD_ROOM = FieldBlocks.BOX + 5;

  /** Sides. */
  enum Align {
    LEFT,
    RIGHT
  }

  /** A cell to the left. */
  static Cell of(String text, TextStyle style) {
    return new Cell(text, style, Align.LEFT, false, null);
  }

  /** The same, to the right. */
  Cell right() {
    return new Cell(text, style, Align.RIGHT, marked, field);
  }

  /** The same, marked by a rule below. */
  Cell withRule() {
    return new Cell(text, style, align, true, field);
  }

  /** The same, with a field before its text; null for none. */
  Cell with(@Nullable Field chosen) {
    return new Cell(text, style, align, marked, chosen);
  }

  /** Room before the text, in points. */
  double indent() {
    return field == null ? 0 : FIELD_ROOM;
  }

  /** Its width on one line. */
  double naturalWidth() {
    return indent() + style.width(style.weight().typeface().printable(text));
  }

  /** The width of its longest word, which is the least that it can do with. */
  double longestWord() {
    String printable = style.weight().typeface().printable(text);
    return indent() + Arrays.stream(printable.split(" ")).mapToDouble(style::width).max().orElse(0);
  }
}

package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.TextStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * Text of one style. A page break leaves at least two of its lines on either side.
 *
 * @param part that it is
 * @param text to write
 * @param style how it looks
 */
record TextBlock(Part part, String text, TextStyle style) implements Block {
  /** Share of the leading above the baseline. */
  static final double ASCENT = 0.76;

  @Override
  public List<Slice> slices(double width) {
    List<String> lines = Lines.of(text, style, width);
    List<Slice> slices = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      Slice slice = i == 0 && part.bookmarked() ? marked(line) : line(line);
      boolean first = i == 0 && lines.size() > 1;
      boolean lastButOne = i == lines.size() - 2;
      slices.add(first || lastButOne ? slice.kept() : slice);
    }
    return slices;
  }

  private Slice marked(String line) {
    Slice plain = line(line);
    return Slice.of(
        0,
        plain.height(),
        (pen, x, y) -> {
          pen.canvas().bookmark(text, y);
          plain.painter().paint(pen, x, y);
        });
  }

  private Slice line(String line) {
    return Slice.of(
        0,
        style.leading(),
        (pen, x, y) ->
            pen.tagged(
                part, () -> pen.canvas().text(x, y + style.leading() * ASCENT, line, style)));
  }
}

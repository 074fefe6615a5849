package io.github.brinewright.internal.document;

/**
 * How text looks.
 *
 * @param weight of the font
 * @param size in points
 * @param leading from line to line, in points
 * @param ink its colour
 */
public record TextStyle(Typeface.Weight weight, double size, double leading, Ink ink) {
  /** Running text. */
  public static final TextStyle BODY = regular(10, 14.2);

  /** Notes and table text. */
  public static final TextStyle SMALL = regular(8.6, 11.8);

  /** Dense tables and lists of sources. */
  public static final TextStyle TINY = regular(7.8, 9.9);

  /** Headings of a section. */
  public static final TextStyle HEADING = new TextStyle(Typeface.Weight.BOLD, 17, 21, Ink.TEXT);

  private static TextStyle regular(double size, double leading) {
    return new TextStyle(Typeface.Weight.REGULAR, size, leading, Ink.TEXT);
  }

  /** The same in the bold weight. */
  public TextStyle bold() {
    return new TextStyle(Typeface.Weight.BOLD, size, leading, ink);
  }

  /** The same in another colour. */
  public TextStyle in(Ink other) {
    return new TextStyle(weight, size, leading, other);
  }

  /** The same in another size, with the leading in proportion. */
  public TextStyle sized(double points) {
    return new TextStyle(weight, points, leading * points / size, ink);
  }

  /** The text, printable and cut with an ellipsis where it is wider than the given points. */
  public String fitting(String text, double points) {
    String fit = weight.typeface().printable(text);
    while (width(fit) > points && fit.length() > 2) {
      int end = fit.offsetByCodePoints(fit.length(), fit.endsWith("…") ? -2 : -1);
      fit = fit.substring(0, end).stripTrailing() + "…";
    }
    return fit;
  }

  /** Width of a text in points. */
  public double width(String text) {
    return weight.typeface().width(text, size);
  }
}

package io.github.brinewright.internal.document;

import java.util.List;

/**
 * What charts are drawn on: the page of a PDF, or a picture of its own. Points, from the top left
 * corner, downwards.
 */
public interface Pad {
  /**
   * Writes one line of text.
   *
   * @param x left end
   * @param baseline of the text
   */
  void text(double x, double baseline, String text, TextStyle style);

  /** Joins points by lines. */
  void path(List<Canvas.Point> points, double width, Ink ink, Canvas.Stroke stroke);

  /** Fills a rectangle. */
  void fill(double x, double top, double width, double tall, Ink ink);

  /**
   * Draws a picture.
   *
   * @param content PNG or JPEG
   */
  void picture(byte[] content, double x, double top, double width, double tall);

  /** Draws a straight line. */
  default void line(Canvas.Point from, Canvas.Point to, double width, Ink ink) {
    path(List.of(from, to), width, ink, Canvas.Stroke.SOLID);
  }

  /** Draws a horizontal rule. */
  default void rule(double x, double y, double length, double width, Ink ink) {
    line(new Canvas.Point(x, y), new Canvas.Point(x + length, y), width, ink);
  }
}

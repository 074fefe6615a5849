package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.chart.Artist;
import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.job.Logo;
import java.util.List;

/**
 * A figure.
 *
 * @param part that it is, with its alternative text
 * @param artist draws it
 */
record FigureBlock(Part part, Artist artist) implements Block {
  @Override
  public List<Slice> slices(double width) {
    double height = artist.height();
    return List.of(
        Slice.of(
            0,
            height,
            (pen, x, y) ->
                pen.tagged(part, () -> artist.draw(pen.canvas(), new Box(x, y, width, height)))));
  }

  /**
   * A picture, scaled into a box.
   *
   * @param part that it is, with its alternative text
   * @param picture to draw
   * @param most its greatest width and height
   */
  static FigureBlock of(Part part, Logo picture, Box most) {
    double scale = scale(picture, most);
    double wide = picture.width() * scale;
    double tall = picture.height() * scale;
    return new FigureBlock(
        part,
        new Artist() {
          @Override
          public double height() {
            return tall;
          }

          @Override
          public void draw(Pad canvas, Box frame) {
            canvas.picture(picture.content(), frame.x(), frame.y(), wide, tall);
          }
        });
  }

  private static double scale(Logo picture, Box most) {
    return Math.min(most.width() / picture.width(), most.height() / picture.height());
  }

  /**
   * A picture at the right edge, scaled into a box, without meaning of its own.
   *
   * @param logo to draw
   * @param most its greatest width and height
   */
  static Block atRight(Logo logo, Box most) {
    double scale = scale(logo, most);
    double wide = logo.width() * scale;
    double tall = logo.height() * scale;
    return width ->
        List.of(
            Slice.of(
                0,
                tall,
                (pen, x, y) ->
                    pen.ornament(
                        () ->
                            pen.canvas()
                                .picture(logo.content(), x + width - wide, y, wide, tall))));
  }

  /** A horizontal rule across the width, without meaning. */
  static Block rule(double thick, Ink ink) {
    return width ->
        List.of(
            Slice.of(
                    0,
                    thick,
                    (pen, x, y) ->
                        pen.ornament(() -> pen.canvas().rule(x, y + thick / 2, width, thick, ink)))
                .kept());
  }
}

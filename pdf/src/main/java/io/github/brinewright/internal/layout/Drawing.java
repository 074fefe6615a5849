package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.job.Logo;
import java.util.List;

/**
 * A figure.
 *
 * @param tag it belongs to, with its alternative text
 * @param artist draws it
 */
public record Drawing(Tag tag, Artist artist) implements Block {
  /** Draws within a frame. */
  public interface Artist {
    /** Height it needs, in points. */
    double height();

    /** Draws within the given frame. */
    void draw(Canvas canvas, Box frame);
  }

  @Override
  public List<Slice> slices(double width) {
    double height = artist.height();
    return List.of(
        Slice.of(
            0,
            height,
            (canvas, x, y) ->
                canvas.tagged(tag, () -> artist.draw(canvas, new Box(x, y, width, height)))));
  }

  /**
   * A picture at the right edge, scaled into a box, without meaning of its own.
   *
   * @param logo to draw
   * @param most its greatest width and height
   */
  public static Block atRight(Logo logo, Box most) {
    double scale = Math.min(most.width() / logo.width(), most.height() / logo.height());
    double wide = logo.width() * scale;
    double tall = logo.height() * scale;
    return width ->
        List.of(
            Slice.of(
                0,
                tall,
                (canvas, x, y) ->
                    canvas.ornament(
                        () -> canvas.picture(logo.content(), x + width - wide, y, wide, tall))));
  }

  /** A horizontal rule across the width, without meaning. */
  public static Block rule(double thick, Ink ink) {
    return width ->
        List.of(
            Slice.of(
                    0,
                    thick,
                    (canvas, x, y) ->
                        canvas.ornament(() -> canvas.rule(x, y + thick / 2, width, thick, ink)))
                .kept());
  }
}

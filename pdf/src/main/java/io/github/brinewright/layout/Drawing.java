package io.github.brinewright.layout;

import io.github.brinewright.document.Canvas;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.Tag;
import java.util.List;

/**
 * A figure of fixed height.
 *
 * @param tag it belongs to, with its alternative text
 * @param height in points
 * @param artist draws it
 */
public record Drawing(Tag tag, double height, Artist artist) implements Block {
  /** Draws within a frame. */
  @FunctionalInterface
  public interface Artist {
    /** Draws within the given frame. */
    void draw(Canvas canvas, Box frame);
  }

  @Override
  public List<Slice> slices(double width) {
    return List.of(
        Slice.of(
            0,
            height,
            (canvas, x, y) ->
                canvas.tagged(tag, () -> artist.draw(canvas, new Box(x, y, width, height)))));
  }

  /** An empty square to tick, without meaning of its own. */
  public static Block square(double side, Ink ink) {
    return width ->
        List.of(
            Slice.of(
                0,
                side,
                (canvas, x, y) ->
                    canvas.ornament(
                        () ->
                            canvas.path(
                                new Box(x + 1, y + 2, side, side).outline(),
                                0.8,
                                ink,
                                Canvas.Stroke.SOLID))));
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

package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import java.util.List;

/**
 * A field to fill, over the whole width.
 *
 * @param tag it belongs to, of the role of a form
 * @param field to fill
 * @param height in points
 */
public record FieldBox(Tag tag, Field field, double height) implements Block {
  @Override
  public List<Slice> slices(double width) {
    return List.of(
        Slice.of(
            0,
            height,
            (canvas, x, y) -> {
              if (field.kind() == Field.Kind.TICK) {
                canvas.ornament(() -> edge(canvas, new Box(x, y, width, height)));
              }
              canvas.field(tag, field, x, y, width, height);
            }));
  }

  /** The edge of a box to tick stands on the page: some programs draw an empty one as nothing. */
  private static void edge(Canvas canvas, Box box) {
    canvas.path(box.outline(), 0.8, Ink.TEXT, Canvas.Stroke.SOLID);
  }
}

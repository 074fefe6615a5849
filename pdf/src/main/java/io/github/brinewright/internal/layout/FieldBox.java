package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Ink;
import java.util.List;

/**
 * A field to fill, over the whole width.
 *
 * @param part that it is, of the role of a form
 * @param field to fill
 * @param height in points
 */
record FieldBox(Part part, Field field, double height) implements Block {
  @Override
  public List<Slice> slices(double width) {
    return List.of(
        Slice.of(
            0,
            height,
            (pen, x, y) -> {
              Box box = new Box(x, y, width, height);
              put(pen, part, field, box);
            }));
  }

  /** Puts a field on the page, what is ticked or marked with its edge. */
  static void put(Pen pen, Part part, Field field, Box box) {
    if (field.shared()) {
      pen.ornament(() -> edge(pen.canvas(), field, box));
    }
    pen.field(part, field, box);
  }

  /** The edge of a box to tick stands on the page: some programs draw an empty one as nothing. */
  private static void edge(Canvas canvas, Field field, Box box) {
    List<Canvas.Point> edge = field.kind() == Field.Kind.TICK ? box.outline() : box.round();
    canvas.path(edge, 0.8, Ink.TEXT, Canvas.Stroke.SOLID);
  }
}

package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Field;

/**
 * Puts pieces on one page and opens the tags of their parts.
 *
 * @param canvas of the page
 * @param tags of the document
 */
record Pen(Canvas canvas, Tags tags) {
  /** What is drawn belongs to a part. Must not be nested. */
  void tagged(Part part, Runnable drawing) {
    canvas.tagged(tags.of(part), drawing);
  }

  /** A part is there, though it has nothing to draw. */
  void empty(Part part) {
    tags.of(part);
  }

  /** What is drawn has no meaning of its own. Must not be nested. */
  void ornament(Runnable drawing) {
    canvas.ornament(drawing);
  }

  /** Puts a field on the page. */
  void field(Part part, Field field, Box box) {
    canvas.field(tags.of(part), field, box.x(), box.y(), box.width(), box.height());
  }
}

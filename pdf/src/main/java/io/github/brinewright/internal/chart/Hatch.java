package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;

/** Ways to fill a part of a chart that differ without colour. All are outlined. */
enum Hatch {
  SOLID,
  RISING(1),
  CROSSED(1, -1),
  OPEN,
  FALLING(-1);

  private static final double STEP = 3.6;
  private static final double LINE = 0.7;

  private final int[] slants;

  Hatch(int... slants) {
    this.slants = slants;
  }

  /** Fills a box. */
  void fill(Canvas canvas, Box box, Ink ink) {
    if (this == SOLID) {
      canvas.fill(box.x(), box.y(), box.width(), box.height(), ink);
    }
    for (int slant : slants) {
      slanted(canvas, box, ink, slant);
    }
    canvas.path(box.outline(), LINE, ink, Canvas.Stroke.SOLID);
  }

  /** Lines at 45 degrees, those that begin left of the box included. */
  private static void slanted(Canvas canvas, Box box, Ink ink, int direction) {
    double tall = box.height();
    double from = direction > 0 ? box.bottom() : box.y();
    double to = direction > 0 ? box.y() : box.bottom();
    canvas.within(
        box.x(),
        box.y(),
        box.width(),
        tall,
        () -> {
          for (double x = box.x() - tall + STEP / 2; x < box.right(); x += STEP) {
            canvas.line(new Canvas.Point(x, from), new Canvas.Point(x + tall, to), LINE, ink);
          }
        });
  }
}

package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Pad;
import java.util.List;

/**
 * A fill with an edge. Those that stand side by side differ in lightness, so that they read in
 * black and white too.
 *
 * @param inside of it
 * @param edge around it
 */
record Tint(Ink inside, Ink edge) {
  /** Light, with a quiet edge. */
  static final Tint LIGHT = new Tint(Ink.HAIRLINE, Ink.QUIET);

  /** White, with a quiet edge. */
  static final Tint OPEN = new Tint(Ink.PAPER, Ink.QUIET);

  /** Between light and quiet. */
  static final Tint MIDDLE = new Tint(Ink.MIDDLE, Ink.QUIET);

  /** As dark as notes. */
  static final Tint DARK = new Tint(Ink.QUIET, Ink.QUIET);

  private static final double EDGE = 0.6;

  /** The dealer's colour. */
  static Tint accent(Ink accent) {
    return new Tint(accent, accent);
  }

  /** Five that differ from their neighbours in lightness, the dealer's colour first. */
  static List<Tint> five(Ink accent) {
    return List.of(accent(accent), MIDDLE, LIGHT, DARK, OPEN);
  }

  /** Fills a box and draws its edge. */
  void fill(Pad canvas, Box box) {
    canvas.fill(box.x(), box.y(), box.width(), box.height(), inside);
    canvas.path(box.outline(), EDGE, edge, Canvas.Stroke.SOLID);
  }
}

package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Pad;

/** Draws a chart within a frame. */
public interface Artist {
  /** Height it needs, in points. */
  double height();

  /** Draws within the given frame. */
  void draw(Pad canvas, Box frame);
}

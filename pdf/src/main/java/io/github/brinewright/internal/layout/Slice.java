package io.github.brinewright.internal.layout;

import org.jspecify.annotations.Nullable;

/**
 * A measured piece that no page break divides.
 *
 * @param gap room above it, unless it comes first on a page
 * @param height in points
 * @param keepWithNext whether the next slice must stand on the same page
 * @param repeated drawn above it when it comes first on a page: the header of its table
 * @param painter draws it
 */
record Slice(
    double gap, double height, boolean keepWithNext, @Nullable Slice repeated, Painter painter) {
  /** Draws at a place: left edge and top. */
  @FunctionalInterface
  interface Painter {
    /** Draws with the left top corner at the given point. */
    void paint(Pen pen, double x, double y);
  }

  /** A plain slice. */
  static Slice of(double gap, double height, Painter painter) {
    return new Slice(gap, height, false, null, painter);
  }

  /** The same, kept with the next slice. */
  Slice kept() {
    return new Slice(gap, height, true, repeated, painter);
  }

  /** The same with more room above. */
  Slice after(double more) {
    return new Slice(gap + more, height, keepWithNext, repeated, painter);
  }

  /** The same, moved to the right. */
  Slice shifted(double right) {
    Slice moved = repeated == null ? null : repeated.shifted(right);
    return new Slice(
        gap, height, keepWithNext, moved, (pen, x, y) -> painter.paint(pen, x + right, y));
  }
}

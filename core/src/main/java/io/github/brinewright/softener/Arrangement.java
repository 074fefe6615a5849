package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;

/** How the tanks of a softener work together. */
public enum Arrangement {
  /** One tank. */
  SINGLE(1, 1),

  /** Two tanks that take turns: one serves while the other regenerates or waits. */
  TWIN_ALTERNATING(2, 2),

  /** Two to four tanks that share the flow; while one regenerates, the others serve. */
  PARALLEL(2, 4);

  private final Bounds<Integer> tanks;

  Arrangement(int fewest, int most) {
    tanks = Bounds.of(fewest, most);
  }

  /** {@return how many tanks such a softener may have} */
  public Bounds<Integer> tanks() {
    return tanks;
  }
}

package io.github.brinewright.comparison;

/** How a candidate stands to a margin; only a broken one ranks. */
public enum Grade {
  /** Within the margin. */
  KEPT,
  /**
   * Misses it by at most a tenth, both rounded to two figures, or keeps it by one of two methods.
   */
  NEAR,
  /** Misses it by more. */
  BROKEN
}

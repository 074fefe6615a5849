package io.github.brinewright.model;

import java.util.List;

/**
 * The few figures that matter most, each large above its label, side by side.
 *
 * @param rows from left to right; four at most fit well
 */
public record Facts(List<Row> rows) implements Element {
  /**
   * Keeps its own copy of {@code rows}.
   *
   * @param rows from left to right; four at most fit well
   */
  public Facts {
    rows = List.copyOf(rows);
  }
}

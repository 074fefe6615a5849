package io.github.brinewright.model;

import java.util.List;

/**
 * Columns of the same width side by side. They are not divided over pages: short matter only.
 *
 * @param columns from left to right, each from top to bottom
 */
public record Columns(List<List<Element>> columns) implements Element {
  /**
   * Keeps its own copies of the lists.
   *
   * @param columns from left to right, each from top to bottom
   */
  public Columns {
    columns = columns.stream().map(List::copyOf).toList();
  }
}

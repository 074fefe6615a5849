package io.github.brinewright.model;

import java.util.List;

/**
 * Short texts, each below its name, side by side where there is room.
 *
 * @param rows labelled by the names
 */
public record Notes(List<Row> rows) implements Element {
  /**
   * Keeps its own copy of {@code rows}.
   *
   * @param rows labelled by the names
   */
  public Notes {
    rows = List.copyOf(rows);
  }
}

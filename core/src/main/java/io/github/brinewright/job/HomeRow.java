package io.github.brinewright.job;

import java.util.Map;

/**
 * A home as a row of sites.csv gives it.
 *
 * @param home that the row describes
 * @param cells that are filled, by column, as they stand
 */
public record HomeRow(QuotedHome home, Map<String, String> cells) {
  /**
   * Keeps its own copy of the cells.
   *
   * @param home that the row describes
   * @param cells that are filled, by column, as they stand
   */
  public HomeRow {
    cells = Map.copyOf(cells);
  }
}

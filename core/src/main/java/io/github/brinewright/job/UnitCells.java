package io.github.brinewright.job;

import java.util.List;
import java.util.Map;

/** The cells of one unit in units.csv, as they are written there and not yet understood. */
public final class UnitCells {
  /** Name of the file. */
  public static final String FILE = UnitColumns.COLUMNS.file();

  private UnitCells() {}

  /**
   * {@return the text of a units.csv with one unit: a column for each filled cell, in a fixed
   * order}
   *
   * @param cells by column, as they are written
   */
  public static String csv(Map<String, String> cells) {
    return Csv.write(UnitColumns.all(), List.of(cells));
  }
}

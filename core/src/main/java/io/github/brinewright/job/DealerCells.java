package io.github.brinewright.job;

import java.util.Map;
import java.util.stream.Collectors;

/** The values of dealer.properties, as they are written there and not yet understood. */
public final class DealerCells {
  /** Name of the file. */
  public static final String FILE = DealerColumns.COLUMNS.file();

  private DealerCells() {}

  /**
   * {@return the text of a dealer.properties: a line for each key, in the order of the map}
   *
   * @param values by key, as they are written
   */
  public static String text(Map<String, String> values) {
    return values.entrySet().stream()
        .map(each -> each.getKey() + '=' + escaped(each.getValue()) + '\n')
        .collect(Collectors.joining());
  }

  /** A backslash before what the format would take for its own. */
  private static String escaped(String value) {
    return value
        .replace("\\", "\\\\")
        .replace("\n", "\\n")
        .replace("\r", "\\r")
        .replace("\t", "\\t")
        .replace("\f", "\\f");
  }
}

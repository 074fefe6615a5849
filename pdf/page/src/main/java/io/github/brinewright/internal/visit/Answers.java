package io.github.brinewright.internal.visit;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.proposal.FilledVisit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * What stands in the fields of a page, as cells of a row.
 *
 * @param fields by name
 * @param cells that they stand for, by column
 */
record Answers(Map<String, String> fields, Map<String, String> cells) {
  private static final String FIXTURES = "fixtures";
  private static final String NOT_TESTED = "not tested";

  Answers(Map<String, String> fields, Locale language) {
    this(fields, FilledVisit.cells(fields, language));
  }

  /**
   * A row with these answers. Cells that no field has stay, and those whose fields say the same
   * stay as they are written.
   */
  Map<String, String> in(Map<String, String> stored) {
    Map<String, String> row = new LinkedHashMap<>();
    for (Column column : SiteColumns.all()) {
      String name = column.name();
      String before = stored.getOrDefault(name, "");
      String now = isAsked(name) && !same(column, before) ? cell(name) : before;
      if (!now.isEmpty()) {
        row.put(name, now);
      }
    }
    return row;
  }

  private String cell(String name) {
    return cells.getOrDefault(name, "");
  }

  private boolean isAsked(String name) {
    return name.equals(FIXTURES)
        ? fields.keySet().stream().anyMatch(field -> field.startsWith(FIXTURES))
        : cells.containsKey(name);
  }

  private boolean same(Column column, String before) {
    String now = cell(column.name());
    return switch (column.kind()) {
      case COUNTS -> counts(now).equals(counts(before));
      case CHOICE -> now.equalsIgnoreCase(before);
      default -> now.equals(before) || now.isEmpty() && before.equalsIgnoreCase(NOT_TESTED);
    };
  }

  /** Numbers by what they count, in any order. */
  private static Map<String, String> counts(String cell) {
    String[] words = cell.strip().toLowerCase(Locale.ROOT).split("\\s+");
    Map<String, String> counts = new LinkedHashMap<>();
    for (int i = 0; i + 1 < words.length; i += 2) {
      counts.put(words[i + 1], words[i]);
    }
    return counts;
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import java.util.List;

/**
 * What is set at a meter: a volume, or a hardness with a capacity, with its reserve deducted or set
 * besides.
 *
 * @param columns the ways to set it, one of them in use, and the way in which it was found
 */
record MeterTable(List<MeterColumn> columns) {
  private static final String KEY = "settings.meter";

  Table table() {
    return new Table(
        KEY,
        Phrase.text(KEY),
        columns.stream().map(MeterColumn::column).toList(),
        MeterColumn.KEYS.stream().filter(this::asked).map(this::line).toList());
  }

  /** What no column has anything for is left out, unless there is nothing at all. */
  private boolean asked(String key) {
    return columns.stream().anyMatch(column -> column.values().containsKey(key))
        || (!key.equals(MeterColumn.RESERVE)
            && columns.stream().allMatch(column -> column.values().isEmpty()));
  }

  private Table.Line line(String key) {
    return Table.Line.of(
        key,
        columns.stream()
            .map(column -> column.values().getOrDefault(key, ControlValues.NONE))
            .toList());
  }
}

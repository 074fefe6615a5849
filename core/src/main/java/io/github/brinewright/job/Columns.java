package io.github.brinewright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * The columns of one file. A column is declared once: its name, kind, unit and range, where its
 * value goes, and where it comes from when it is written.
 *
 * @param <D> what the values of a row are collected in
 * @param <S> what a row is written from
 */
final class Columns<D, S> {
  private record Entry<D, S, T>(
      Column column, Typed<T> typed, BiConsumer<D, T> set, Function<S, Optional<T>> get) {
    void read(Row row, D draft) {
      row.read(column, typed.format())
          .or(typed::usual)
          .ifPresent(value -> set.accept(draft, value));
    }

    String write(S source) {
      return get.apply(source).map(typed.format()::write).orElse("");
    }
  }

  private final String file;
  private final List<Entry<D, S, ?>> entries = new ArrayList<>();
  private String part = "";

  Columns(String file) {
    this.file = file;
  }

  /** The part of a form that asks for the columns added from now on. */
  Columns<D, S> part(String name) {
    part = name;
    return this;
  }

  /** Adds a column that may be left empty. */
  <T> Columns<D, S> add(Typed<T> column, BiConsumer<D, T> set, Function<S, Optional<T>> get) {
    entries.add(new Entry<>(column.in(file, part), column, set, get));
    return this;
  }

  /** Adds a column that is always filled when it is written. */
  <T> Columns<D, S> always(Typed<T> column, BiConsumer<D, T> set, Function<S, T> get) {
    return add(column, set, get.andThen(Optional::of));
  }

  /** Name of the file. */
  String file() {
    return file;
  }

  /** All columns, in the order in which they are written. */
  List<Column> all() {
    return entries.stream().map(Entry::column).<Column>toList();
  }

  /** Their names. */
  List<String> names() {
    return all().stream().map(Column::name).toList();
  }

  /** The column of a name. */
  Column column(String name) {
    return all().get(names().indexOf(name));
  }

  /**
   * Puts all values of a row into a draft, the usual ones for empty cells, noting whatever is
   * wrong.
   */
  void read(Row row, D draft) {
    entries.forEach(entry -> entry.read(row, draft));
  }

  /** The cells of a row, by column; empty ones are left out. */
  Map<String, String> cells(S source) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (Entry<D, S, ?> entry : entries) {
      String text = entry.write(source);
      if (!text.isEmpty()) {
        cells.put(entry.column().name(), text);
      }
    }
    return cells;
  }

  /** The text of a file with one row for each of these. */
  String csv(List<S> rows) {
    return Csv.write(all(), rows.stream().map(this::cells).toList());
  }
}

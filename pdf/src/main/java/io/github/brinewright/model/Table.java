package io.github.brinewright.model;

import io.github.brinewright.trace.Source;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A table of lines and columns.
 *
 * @param key by which it is known in every language
 * @param corner head of the labels
 * @param columns beside the labels, from left to right
 * @param lines from top to bottom, each with a cell for each column
 */
public record Table(String key, Phrase corner, List<Column> columns, List<Line> lines)
    implements Element {
  /** What a column holds. */
  public enum Kind {
    /** Text. */
    TEXT,
    /** Values. */
    VALUES,
    /** The values that the table is read for. */
    MAIN,
    /** The values of what is recommended or chosen, marked as such. */
    CHOSEN
  }

  /**
   * A column.
   *
   * @param key by which it is known in every language; unique within the table
   * @param head of it
   * @param kind what it holds
   * @param field to tick or to mark before its head; null for none
   */
  public record Column(String key, Phrase head, Kind kind, @Nullable Field field) {
    /**
     * A column without a field.
     *
     * @param key by which it is known in every language; unique within the table
     * @param head of it
     * @param kind what it holds
     */
    public Column(String key, Phrase head, Kind kind) {
      this(key, head, kind, null);
    }

    /**
     * {@return the same with a field before its head}
     *
     * @param chosen to tick or to mark
     */
    public Column with(Field chosen) {
      return new Column(key, head, kind, chosen);
    }
  }

  /**
   * A line.
   *
   * @param key by which it is known in every language; unique within the table
   * @param label what its cells are
   * @param cells one for each column
   * @param source of what the line says, where it has one of its own
   * @param total whether it sums up the lines above it
   * @param marked numbers of the cells that are marked by a rule, from 0
   * @param field to tick or to mark before its label; null for none
   */
  public record Line(
      String key,
      Phrase label,
      List<Phrase> cells,
      @Nullable Source source,
      boolean total,
      Set<Integer> marked,
      @Nullable Field field) {
    /**
     * Keeps its own copies of {@code cells} and {@code marked}.
     *
     * @param key by which it is known in every language; unique within the table
     * @param label what its cells are
     * @param cells one for each column
     * @param source of what the line says, where it has one of its own
     * @param total whether it sums up the lines above it
     * @param marked numbers of the cells that are marked by a rule, from 0
     * @param field to tick or to mark before its label; null for none
     */
    public Line {
      cells = List.copyOf(cells);
      marked = Set.copyOf(marked);
    }

    /**
     * A line without marks.
     *
     * @param key by which it is known in every language; unique within the table
     * @param label what its cells are
     * @param cells one for each column
     * @param source of what the line says, where it has one of its own
     * @param total whether it sums up the lines above it
     */
    public Line(
        String key, Phrase label, List<Phrase> cells, @Nullable Source source, boolean total) {
      this(key, label, cells, source, total, Set.of(), null);
    }

    /**
     * {@return a line whose label is the text of its key}
     *
     * @param key by which the line is known in every language; unique within its table
     * @param cells one for each column
     */
    public static Line of(String key, List<Phrase> cells) {
      return of(key, Phrase.text(key), cells);
    }

    /**
     * {@return a line with a label of its own}
     *
     * @param key by which the line is known in every language; unique within its table
     * @param label at the left of the line
     * @param cells one for each column
     */
    public static Line of(String key, Phrase label, List<Phrase> cells) {
      return new Line(key, label, cells, null, false);
    }

    /**
     * {@return the same with the source of what it says}
     *
     * @param other where what it says comes from
     */
    public Line from(Source other) {
      return new Line(key, label, cells, other, total, marked, field);
    }

    /** {@return the same as a sum of the lines above it} */
    public Line summing() {
      return new Line(key, label, cells, source, true, marked, field);
    }

    /**
     * {@return the same with cells marked by a rule}
     *
     * @param numbers of the cells, from 0
     */
    public Line marking(Set<Integer> numbers) {
      return new Line(key, label, cells, source, total, numbers, field);
    }

    /**
     * {@return the same with a field before its label}
     *
     * @param chosen to tick or to mark
     */
    public Line with(Field chosen) {
      return new Line(key, label, cells, source, total, marked, chosen);
    }
  }

  /**
   * Keeps its own copies of the lists.
   *
   * @param key by which it is known in every language
   * @param corner head of the labels
   * @param columns beside the labels, from left to right
   * @param lines from top to bottom, each with a cell for each column
   * @throws IllegalArgumentException when a line has more or fewer cells than there are columns
   */
  public Table {
    columns = List.copyOf(columns);
    lines = List.copyOf(lines);
    for (Line line : lines) {
      if (line.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            "the line "
                + line.key()
                + " has "
                + line.cells().size()
                + " cells, but the table "
                + key
                + " has "
                + columns.size()
                + " columns");
      }
    }
  }
}

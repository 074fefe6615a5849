package io.github.brinewright.model;

import java.util.List;

/**
 * Fields in rows, each below its label.
 *
 * @param columns how many narrow fields stand side by side; 1 or more
 * @param entries from left to right, row by row
 */
public record Fields(int columns, List<Entry> entries) implements Element {
  /**
   * A field in its row.
   *
   * @param field to fill
   * @param span how many columns it takes; 1 or more
   */
  public record Entry(Field field, int span) {
    /**
     * {@return a narrow field}
     *
     * @param field to fill
     */
    public static Entry of(Field field) {
      return new Entry(field, 1);
    }
  }

  /**
   * Keeps its own copy of {@code entries}.
   *
   * @param columns how many narrow fields stand side by side; 1 or more
   * @param entries from left to right, row by row
   * @throws IllegalArgumentException when there is no column, or an entry takes none or more than
   *     there are
   */
  public Fields {
    entries = List.copyOf(entries);
    for (Entry entry : entries) {
      if (entry.span() < 1 || entry.span() > columns) {
        throw new IllegalArgumentException(
            "the field \""
                + entry.field().name()
                + "\" takes "
                + entry.span()
                + " of "
                + columns
                + " columns");
      }
    }
  }
}

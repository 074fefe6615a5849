package io.github.brinewright.model;

import java.util.List;

/**
 * Labelled rows below a row of heads.
 *
 * @param key by which they are known in every language
 * @param heads over labels and values and, where rows have notes, over those: two or three
 * @param rows from top to bottom
 */
public record Rows(String key, List<Phrase> heads, List<Row> rows) implements Element {
  /**
   * Keeps its own copies of the lists.
   *
   * @param key by which they are known in every language
   * @param heads over labels and values and, where rows have notes, over those: two or three
   * @param rows from top to bottom
   * @throws IllegalArgumentException when there are not two or three heads
   */
  public Rows {
    if (heads.size() < 2 || heads.size() > 3) {
      throw new IllegalArgumentException(
          "labelled rows have 2 or 3 heads, not " + heads.size() + ": " + key);
    }
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }
}

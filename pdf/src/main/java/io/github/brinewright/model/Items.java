package io.github.brinewright.model;

import java.util.List;

/**
 * A list.
 *
 * @param items each for itself, in order
 * @param compact whether they are many and may be set small
 */
public record Items(List<Phrase> items, boolean compact) implements Element {
  /**
   * Keeps its own copy of {@code items}.
   *
   * @param items each for itself, in order
   * @param compact whether they are many and may be set small
   */
  public Items {
    items = List.copyOf(items);
  }
}

package io.github.brinewright.model;

import io.github.brinewright.trace.Source;
import java.util.List;

/**
 * Numbered sources.
 *
 * @param first number of the first one
 * @param sources in order
 */
public record References(int first, List<Source> sources) implements Element {
  /**
   * Keeps its own copy of {@code sources}.
   *
   * @param first number of the first one
   * @param sources in order
   */
  public References {
    sources = List.copyOf(sources);
  }
}

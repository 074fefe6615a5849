package io.github.brinewright.model;

import java.util.List;

/**
 * What belongs together and stands on one page where it fits.
 *
 * @param elements from top to bottom
 */
public record Together(List<Element> elements) implements Element {
  /**
   * Keeps its own copy of {@code elements}.
   *
   * @param elements from top to bottom
   */
  public Together {
    elements = List.copyOf(elements);
  }

  /**
   * {@return elements that belong together}
   *
   * @param elements from top to bottom
   */
  public static Together of(Element... elements) {
    return new Together(List.of(elements));
  }
}

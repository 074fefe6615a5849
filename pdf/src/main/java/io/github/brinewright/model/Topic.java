package io.github.brinewright.model;

import java.util.List;

/**
 * A short label with what belongs to it beside it.
 *
 * @param label short
 * @param matter of any length; one element at least
 */
public record Topic(Phrase label, List<Element> matter) implements Element {
  /**
   * Keeps its own copy of {@code matter}.
   *
   * @throws IllegalArgumentException when there is none
   */
  public Topic {
    if (matter.isEmpty()) {
      throw new IllegalArgumentException("a topic needs something beside its label");
    }
    matter = List.copyOf(matter);
  }

  /** A topic labelled by a text. */
  public static Topic of(String labelKey, Element... matter) {
    return new Topic(Phrase.text(labelKey), List.of(matter));
  }
}

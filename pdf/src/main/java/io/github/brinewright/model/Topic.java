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
   * @param label short
   * @param matter of any length; one element at least
   * @throws IllegalArgumentException when there is none
   */
  public Topic {
    if (matter.isEmpty()) {
      throw new IllegalArgumentException("a topic needs something beside its label");
    }
    matter = List.copyOf(matter);
  }

  /**
   * {@return a topic labelled by a text}
   *
   * @param labelKey key of the text that is the label
   * @param matter one element at least, from top to bottom
   */
  public static Topic of(String labelKey, Element... matter) {
    return new Topic(Phrase.text(labelKey), List.of(matter));
  }
}

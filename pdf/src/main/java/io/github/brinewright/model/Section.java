package io.github.brinewright.model;

import java.util.List;

/**
 * A part of a document with a title.
 *
 * @param key by which it is known in every language, as {@code "water"}; unique within a document
 * @param title of it; {@link Phrase#NONE} where the head of the document is title enough
 * @param elements from top to bottom
 * @param ownPage whether it begins a page
 */
public record Section(String key, Phrase title, List<Element> elements, boolean ownPage) {
  /**
   * Keeps its own copy of {@code elements}.
   *
   * @param key by which it is known in every language, as {@code "water"}; unique within a document
   * @param title of it; {@link Phrase#NONE} where the head of the document is title enough
   * @param elements from top to bottom
   * @param ownPage whether it begins a page
   */
  public Section {
    elements = List.copyOf(elements);
  }

  /**
   * {@return a section that follows the one before it}
   *
   * @param key by which it is known in every language; unique within a document
   * @param title of the section
   * @param elements from top to bottom
   */
  public static Section of(String key, Phrase title, Element... elements) {
    return new Section(key, title, List.of(elements), false);
  }

  /** {@return the same beginning a page} */
  public Section onOwnPage() {
    return new Section(key, title, elements, true);
  }
}

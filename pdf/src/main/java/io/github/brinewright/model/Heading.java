package io.github.brinewright.model;

/**
 * A heading within a section.
 *
 * @param text of it
 * @param rank how much it stands out
 */
public record Heading(Phrase text, Rank rank) implements Element {
  /** How much a heading stands out. */
  public enum Rank {
    /** Over a part of a section. */
    PART,
    /** The one name that the document is about. */
    NAME
  }

  /**
   * {@return a heading over a part of a section}
   *
   * @param text of the heading
   */
  public static Heading of(Phrase text) {
    return new Heading(text, Rank.PART);
  }
}

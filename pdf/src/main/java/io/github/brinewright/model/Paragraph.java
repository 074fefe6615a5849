package io.github.brinewright.model;

/**
 * Running text.
 *
 * @param text of it
 * @param voice how loud it speaks
 */
public record Paragraph(Phrase text, Voice voice) implements Element {
  /** How loud a text speaks. */
  public enum Voice {
    /** As text does. */
    PLAIN,
    /** Stands out: a warning, a name. */
    STRONG,
    /** Stands back: a caption, a note. */
    QUIET,
    /** Small print. */
    FINE
  }

  /**
   * {@return a paragraph of plain text}
   *
   * @param text of the paragraph
   */
  public static Paragraph of(Phrase text) {
    return new Paragraph(text, Voice.PLAIN);
  }

  /**
   * {@return a paragraph that stands out}
   *
   * @param text of the paragraph
   */
  public static Paragraph strong(Phrase text) {
    return new Paragraph(text, Voice.STRONG);
  }

  /**
   * {@return a paragraph that stands back}
   *
   * @param text of the paragraph
   */
  public static Paragraph quiet(Phrase text) {
    return new Paragraph(text, Voice.QUIET);
  }

  /**
   * {@return a paragraph of small print}
   *
   * @param text of the paragraph
   */
  public static Paragraph fine(Phrase text) {
    return new Paragraph(text, Voice.FINE);
  }
}

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

  /** Plain text. */
  public static Paragraph of(Phrase text) {
    return new Paragraph(text, Voice.PLAIN);
  }

  /** Text that stands out. */
  public static Paragraph strong(Phrase text) {
    return new Paragraph(text, Voice.STRONG);
  }

  /** Text that stands back. */
  public static Paragraph quiet(Phrase text) {
    return new Paragraph(text, Voice.QUIET);
  }

  /** Small print. */
  public static Paragraph fine(Phrase text) {
    return new Paragraph(text, Voice.FINE);
  }
}

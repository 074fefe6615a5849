package io.github.brinewright.proposal;

import io.github.brinewright.internal.section.SectionTexts;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The texts of documents. {@code DocumentTexts.ours().in(Locale.US)} together with {@code
 * Texts.library().in(Locale.US)} has every key that documents in a further language need.
 */
public final class DocumentTexts {
  private DocumentTexts() {}

  /**
   * {@return the headings, labels and sentences of all documents, in English, French and Spanish}
   */
  public static Texts ours() {
    return SectionTexts.TEXTS;
  }

  /**
   * {@return words for documents}
   *
   * @param locale language and number formats
   * @param system units
   * @param own texts that replace ours, add to them, or bring a language; later ones replace
   *     earlier ones
   * @throws IllegalArgumentException as {@link Wording#of}
   */
  public static Wording words(Locale locale, UnitSystem system, Texts... own) {
    Texts[] all = Stream.concat(Stream.of(ours()), Stream.of(own)).toArray(Texts[]::new);
    return Wording.of(locale, system, all);
  }
}

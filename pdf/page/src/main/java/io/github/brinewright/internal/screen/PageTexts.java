package io.github.brinewright.internal.screen;

import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.words.TextFiles;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The words of the page: those of documents, and its own. */
public final class PageTexts {
  /** What only the page says. */
  static final Texts OWN =
      new TextFiles("page", List.of("es", "fr"), file -> PageTexts.class.getResourceAsStream(file));

  private static final Map<String, Wording> MADE = new ConcurrentHashMap<>();

  private PageTexts() {}

  /**
   * The words of a language.
   *
   * @param locale one that documents are written in
   * @param system units
   */
  public static Wording words(Locale locale, UnitSystem system) {
    return MADE.computeIfAbsent(
        locale.toLanguageTag() + " " + system, key -> DocumentTexts.words(locale, system, OWN));
  }
}

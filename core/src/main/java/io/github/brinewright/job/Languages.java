package io.github.brinewright.job;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The languages that documents are written in. */
public final class Languages {
  /** Codes of ISO 639. */
  static final List<String> CODES = List.of("en", "es", "fr");

  /** The usual locales of these languages. */
  public static final List<Locale> USUAL =
      List.of(Locale.US, Locale.forLanguageTag("es-US"), Locale.CANADA_FRENCH);

  private Languages() {}

  /** Whether documents can be written for a locale. */
  static boolean canWrite(Locale locale) {
    return CODES.contains(locale.getLanguage())
        && Arrays.asList(Locale.getAvailableLocales()).contains(locale);
  }
}

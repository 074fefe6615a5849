package io.github.brinewright.job;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages that documents are written in. */
public final class Languages {
  /** Codes of ISO 639. */
  static final List<String> CODES = List.of("en", "es", "fr");

  /** The usual locales of these languages. */
  public static final List<Locale> USUAL =
      List.of(Locale.US, Locale.forLanguageTag("es-US"), Locale.CANADA_FRENCH);

  private Languages() {}

  /** The locale in a cell; one that documents cannot be written in is noted. */
  static Optional<Locale> in(Row row, String column) {
    return row.text(column).map(tag -> locale(row, column, tag));
  }

  private static Locale locale(Row row, String column, String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    if (!Arrays.asList(Locale.getAvailableLocales()).contains(locale)
        || !CODES.contains(locale.getLanguage())) {
      row.note(column, tag, "is not a locale we write in; write en-US, es-US, fr-CA or the like");
    }
    return locale;
  }
}

package io.github.brinewright.job;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.TextFiles;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The texts of this package in a language: the one place where they are looked up. */
final class JobTexts {
  private static final Texts PROBLEMS = texts("problems");
  private static final Texts COLUMNS = texts("columns");

  private final Wording words;

  private static Texts texts(String name) {
    return new TextFiles(name, List.of("es", "fr"), JobTexts.class::getResourceAsStream);
  }

  /** Texts of {@code problems} and {@code columns}; in English where a language has none. */
  JobTexts(Locale locale) {
    boolean ours = Languages.CODES.contains(locale.getLanguage());
    words = Wording.of(ours ? locale : Locale.US, UnitSystem.US, PROBLEMS, COLUMNS);
  }

  /** A text with each {n} replaced by the nth value. */
  String get(String key, String... values) {
    return words.text(key, Arrays.stream(values).map(Figure::of).toArray(Figure[]::new));
  }
}

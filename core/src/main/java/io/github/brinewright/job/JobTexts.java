package io.github.brinewright.job;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Arrays;
import java.util.Locale;

/** The texts of this package in a language: the one place where they are looked up. */
final class JobTexts {
  private static final String PACKAGE = JobTexts.class.getPackageName();

  private final Wording words;

  /** Texts of {@code problems} and {@code columns}. */
  JobTexts(Locale locale) {
    words = new Wording(locale, UnitSystem.US, PACKAGE + ".problems", PACKAGE + ".columns");
  }

  /** A text with each {n} replaced by the nth value. */
  String get(String key, String... values) {
    return words.text(key, Arrays.stream(values).map(Figure::of).toArray(Figure[]::new));
  }
}

package io.github.brinewright.words;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Set;

/**
 * Which of the two forms of a text a number takes, by the plural rules of the Unicode Common Locale
 * Data Repository (plurals.xml) for the categories "one" and "other".
 */
enum Plural {
  /** One alone, written without decimals: English, German, Swedish. */
  WRITTEN_ONE {
    @Override
    boolean singular(BigDecimal number) {
      return number.scale() <= 0 && number.compareTo(BigDecimal.ONE) == 0;
    }
  },
  /** One, with decimals or without: Spanish, Turkish. */
  EXACTLY_ONE {
    @Override
    boolean singular(BigDecimal number) {
      return number.compareTo(BigDecimal.ONE) == 0;
    }
  },
  /** Everything below two: French. */
  BELOW_TWO {
    @Override
    boolean singular(BigDecimal number) {
      return number.abs().compareTo(BigDecimal.valueOf(2)) < 0;
    }
  };

  private static final Set<String> EXACT = Set.of("es", "tr", "nb", "no", "hu", "el", "bg");
  private static final Set<String> BELOW = Set.of("fr", "hy", "pt");

  /** The rule of a locale; a language without one of its own follows English. */
  static Plural of(Locale locale) {
    String language = locale.getLanguage();
    if (language.equals("pt") && locale.getCountry().equals("PT")) {
      return WRITTEN_ONE;
    }
    if (BELOW.contains(language)) {
      return BELOW_TWO;
    }
    return EXACT.contains(language) ? EXACTLY_ONE : WRITTEN_ONE;
  }

  abstract boolean singular(BigDecimal number);

  String suffix(BigDecimal number) {
    return singular(number) ? ".one" : ".other";
  }
}

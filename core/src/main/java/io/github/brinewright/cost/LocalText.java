package io.github.brinewright.cost;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A dealer's own text, in one language or in several.
 *
 * @param usual the text where none of a language is given; may be empty
 * @param byLanguage texts by code of ISO 639, such as {@code es}
 */
public record LocalText(String usual, Map<String, String> byLanguage) {
  /** No text. */
  public static final LocalText NONE = of("");

  /**
   * Keeps its own copy of the texts; empty ones are left out.
   *
   * @param usual the text where none of a language is given; may be empty
   * @param byLanguage texts by code of ISO 639
   */
  public LocalText {
    byLanguage =
        byLanguage.entrySet().stream()
            .filter(text -> !text.getValue().isEmpty())
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /**
   * {@return a text for all languages}
   *
   * @param usual the text
   */
  public static LocalText of(String usual) {
    return new LocalText(usual, Map.of());
  }

  /**
   * {@return the same text with that of one language}
   *
   * @param language code of ISO 639, such as {@code es}
   * @param text in that language; an empty one is left out
   */
  public LocalText with(String language, String text) {
    Map<String, String> texts = new HashMap<>(byLanguage);
    texts.put(language, text);
    return new LocalText(usual, texts);
  }

  /**
   * {@return the text of a language, or else the usual one}
   *
   * @param locale whose language is written
   */
  public String in(Locale locale) {
    return byLanguage.getOrDefault(locale.getLanguage(), usual);
  }

  /** {@return whether there is no text at all} */
  public boolean isEmpty() {
    return usual.isEmpty() && byLanguage.isEmpty();
  }
}

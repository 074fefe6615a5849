package io.github.brinewright.words;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Texts by key, in one or more languages. A {@link Wording} takes the library's own and those of an
 * embedder, who may so change a sentence or a label, add texts for sections and rules of his own,
 * or bring a whole language:
 *
 * <pre>{@code
 * Texts german = Texts.of(Locale.GERMAN, Map.of("term.Control.CLOCK", "Zeitschaltuhr", ...));
 * Wording words = Wording.of(Locale.GERMANY, UnitSystem.METRIC, german);
 * }</pre>
 *
 * <p>{@code Texts.library().in(Locale.US)} has every key that a further language needs.
 *
 * <p>A text holds figures in braces, counted from 0: <code>{0} of salt</code>. A text that counts
 * something has two forms, under its key with {@code .one} and {@code .other}: <code>
 * unit.day.one={0} day</code> and <code>unit.day.other={0} days</code>. Its first figure chooses,
 * as it is printed and by the rule of the language: French says <code>1,5 jour</code> where English
 * says <code>1.5 days</code>. A language with one form gives the same text twice; one with more
 * than two words its sentences so that two will do.
 */
public interface Texts {
  /**
   * {@return all texts in a language, by key; none when it has none in that language} The same
   * locale always gets the same texts.
   *
   * @param locale language, and country where it matters
   */
  Map<String, String> in(Locale locale);

  /**
   * {@return the keys that must have a text in every language in use: usually those of the English
   * texts}
   */
  default Set<String> keys() {
    return in(Locale.US).keySet();
  }

  /**
   * {@return the texts of one language for all places where it is spoken, or, of a locale with a
   * country, for that country alone} Who adds keys of his own gives them in each language that he
   * writes in.
   *
   * @param locale language, with or without a country
   * @param texts the texts by key
   */
  static Texts of(Locale locale, Map<String, String> texts) {
    return new LocalTexts(locale, Map.copyOf(texts));
  }

  /** {@return the words of this library: figures, steps, findings, terms of the trade} */
  static Texts library() {
    return Messages.LIBRARY;
  }
}

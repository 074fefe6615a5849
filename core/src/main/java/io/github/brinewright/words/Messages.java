package io.github.brinewright.words;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Looks texts up in one language and puts figures into them. */
final class Messages {
  /** The library's own. */
  static final Texts LIBRARY =
      new TextFiles(
          "messages", List.of("es", "fr"), file -> Messages.class.getResourceAsStream(file));

  private static final Locale FIRST = Locale.US;

  /** End of the key of a text that takes the place of another in metric words. */
  private static final String METRIC = ".metric";

  /** A place and the words for one and for several. */
  private static final int FORMS = 3;

  private final Map<String, String> texts = new HashMap<>();
  private final Plural plural;

  /**
   * The texts of a locale; later ones replace earlier ones.
   *
   * @throws IllegalArgumentException when a key has no text in this language, or when an embedder's
   *     text names a figure that is not given to it
   */
  Messages(Locale locale, UnitSystem system, List<Texts> own) {
    plural = Plural.of(locale);
    Set<String> missing = new TreeSet<>(LIBRARY.keys());
    texts.putAll(LIBRARY.in(locale));
    for (Texts more : own) {
      Map<String, String> added = more.in(locale);
      refuseUnknownPlaces(added, LIBRARY.in(FIRST));
      refuseUnknownPlaces(added, more.in(FIRST));
      missing.addAll(more.keys());
      replace(added);
    }
    missing.removeAll(texts.keySet());
    missing.removeIf(key -> key.endsWith(METRIC));
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException(
          "there are no texts in %s for %d keys; give them as Texts: %s"
              .formatted(
                  locale.getDisplayLanguage(Locale.ENGLISH),
                  missing.size(),
                  String.join(", ", missing)));
    }
    if (system == UnitSystem.METRIC) {
      putMetricForms();
    }
  }

  /** A text that replaces another replaces its metric form too. */
  private void replace(Map<String, String> added) {
    added.keySet().forEach(key -> texts.remove(key + METRIC));
    texts.putAll(added);
  }

  private void putMetricForms() {
    Map<String, String> forms = new HashMap<>();
    texts.forEach(
        (key, text) -> {
          if (key.endsWith(METRIC)) {
            forms.put(key.substring(0, key.length() - METRIC.length()), text);
          }
        });
    texts.putAll(forms);
  }

  private static void refuseUnknownPlaces(Map<String, String> added, Map<String, String> first) {
    if (added == first) {
      return;
    }
    added.forEach(
        (key, text) -> {
          String known = first.get(key);
          if (known != null && (places(text) & ~places(known)) != 0) {
            throw new IllegalArgumentException(
                "the text of %s, \"%s\", names other figures than \"%s\""
                    .formatted(key, text, known));
          }
        });
  }

  /** The places of a text, one bit each. */
  private static long places(String text) {
    long places = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', open + 1)) {
      places |= 1L << place(text, open);
    }
    return places;
  }

  private static int place(String text, int open) {
    int end = open + 1;
    while (end < text.length() && Character.isDigit(text.charAt(end))) {
      end++;
    }
    try {
      return Integer.parseInt(text, open + 1, end, 10);
    } catch (NumberFormatException | IndexOutOfBoundsException notANumber) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has a brace without a number such as {0}", notANumber);
    }
  }

  String get(String key) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no text for " + key);
    }
    return text;
  }

  boolean has(String key) {
    return texts.containsKey(key);
  }

  /** The form of a text for a number; the text itself when it has one form. */
  String get(String key, BigDecimal number) {
    String counted = texts.get(key + plural.suffix(number));
    return counted == null ? get(key) : counted;
  }

  /**
   * Replaces each {n} of the text by the nth value, and each {n|one|several} by the word for one
   * where the nth value is printed as 1, or else by the word for several; braces of values are left
   * alone.
   */
  static String fill(String text, List<String> values) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
      int close = text.indexOf('}', open);
      out.append(text, from, open);
      String value = values.get(place(text, open));
      String[] forms = text.substring(open, close).split("\\|");
      out.append(forms.length < FORMS ? value : forms[value.equals("1") ? 1 : 2]);
      from = close + 1;
    }
    return out.append(text, from, text.length()).toString();
  }
}

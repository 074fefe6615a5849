package io.github.brinewright.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.stream.Stream;

/** Looks texts up in one language and puts figures into them. */
final class Messages {
  private static final String BUNDLE = "io.github.brinewright.words.messages";

  private final List<ResourceBundle> bundles;

  Messages(Locale locale, String... more) {
    Control exact = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    bundles =
        Stream.concat(Stream.of(BUNDLE), Arrays.stream(more))
            .map(name -> ResourceBundle.getBundle(name, locale, loader, exact))
            .toList();
  }

  String get(String key) {
    return bundles.stream()
        .filter(bundle -> bundle.containsKey(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no text for " + key))
        .getString(key);
  }

  /** Replaces each {n} of the text by the nth value; braces of values are left alone. */
  static String fill(String text, List<String> values) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
      int close = text.indexOf('}', open);
      out.append(text, from, open);
      out.append(values.get(Integer.parseInt(text.substring(open + 1, close))));
      from = close + 1;
    }
    return out.append(text, from, text.length()).toString();
  }
}

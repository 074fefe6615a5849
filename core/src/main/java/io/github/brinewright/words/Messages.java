package io.github.brinewright.words;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/** Looks texts up in one language and puts figures into them. */
final class Messages {
  private static final String BUNDLE = "io.github.brinewright.words.messages";

  private final ResourceBundle bundle;

  Messages(Locale locale) {
    bundle =
        ResourceBundle.getBundle(
            BUNDLE, locale, Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
  }

  String get(String key) {
    return bundle.getString(key);
  }

  boolean has(String key) {
    return bundle.containsKey(key);
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

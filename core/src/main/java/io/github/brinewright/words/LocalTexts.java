package io.github.brinewright.words;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Texts of one language, or of one country. */
record LocalTexts(Locale locale, Map<String, String> texts) implements Texts {
  @Override
  public Map<String, String> in(Locale asked) {
    boolean applies =
        locale.getLanguage().equals(asked.getLanguage())
            && (locale.getCountry().isEmpty() || locale.getCountry().equals(asked.getCountry()));
    return applies ? texts : Map.of();
  }

  @Override
  public Set<String> keys() {
    return texts.keySet();
  }
}

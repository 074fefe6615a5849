package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What dealer.properties says of one page of the dealer's own. */
final class PageDraft {
  private final Map<String, LocalText> texts = new HashMap<>();
  String picture = "";
  @Nullable Logo drawn;

  /** Says a text in a language, or in those that have none of their own. */
  void say(String what, String language, String text) {
    LocalText now = text(what);
    texts.put(
        what,
        language.isEmpty() ? new LocalText(text, now.byLanguage()) : now.with(language, text));
  }

  LocalText text(String what) {
    return texts.getOrDefault(what, LocalText.NONE);
  }

  /** Whether anything is said of it. */
  boolean isStated() {
    return !texts.isEmpty() || !picture.isEmpty();
  }

  /** The page; empty where nothing is said, or what it needs is missing. */
  Optional<OwnPage> build() {
    LocalText title = text(PageColumns.TITLE);
    LocalText shown = text(PageColumns.ALTERNATIVE);
    return title.isEmpty() || drawn != null && shown.isEmpty()
        ? Optional.empty()
        : Optional.of(new OwnPage(title, text(PageColumns.TEXT), drawn, shown));
  }
}

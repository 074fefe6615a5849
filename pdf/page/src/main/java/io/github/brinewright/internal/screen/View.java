package io.github.brinewright.internal.screen;

import io.github.brinewright.internal.visit.Asked;
import java.util.Locale;

/** The views of the page. */
public enum View {
  /** The entries of a visit, and what follows from them. */
  VISIT,
  /** Sizes side by side, with sliders. */
  COMPARE,
  /** Documents and a link. */
  TAKE;

  /** The one that a page asks for; the visit where it asks for none. */
  static View of(Asked asked) {
    for (View view : values()) {
      if (view.word().equals(asked.value("view"))) {
        return view;
      }
    }
    return VISIT;
  }

  /** Its name in links. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}

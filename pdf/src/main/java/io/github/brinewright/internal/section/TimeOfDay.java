package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.softener.Control;

/** What a clock is set to before all else. */
final class TimeOfDay {
  private TimeOfDay() {}

  /** The time it is, and where weekdays count, the day. */
  static Phrase now(Control control) {
    return Phrase.text(control == Control.WEEKDAYS ? "settings.dayAndTimeNow" : "settings.timeNow");
  }
}

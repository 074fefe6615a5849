package io.github.brinewright.cli;

import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalTime;

/** What a control is set to, for a terminal. */
final class SettingText {
  private SettingText() {}

  /** What starts a regeneration. */
  static String of(BedSettings bed, Wording words) {
    return switch (bed.control()) {
      case CLOCK -> every(bed.days(), words);
      case WEEKDAYS -> words.weekdays(bed.weekdays());
      case METERED_AT_ONCE, METERED_AT_NIGHT -> "after " + words.figure(Figure.of(bed.set()));
    };
  }

  static String every(int days, Wording words) {
    return days == 1 ? "every day" : "every " + words.figure(Figure.days(days, 0));
  }

  /** The time of day of a regeneration. */
  static String hour(BedSettings bed, Wording words) {
    return bed.control() == Control.METERED_AT_ONCE
        ? "at once"
        : words.figure(Figure.of(LocalTime.of(bed.hour(), 0)));
  }
}

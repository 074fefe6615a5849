package io.github.brinewright.internal.section;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** What starts a regeneration, in words with its setting. */
final class FoundSetting {
  private static final String KEY = "service.setting";

  private FoundSetting() {}

  /** As a visit found it, each thing that is set in a row of its own. */
  static List<Row> rows(PresentControl control) {
    if (control instanceof PresentControl.Clock clock) {
      return List.of(Row.of(KEY, every(clock.days())));
    } else if (control instanceof PresentControl.Weekdays weekdays) {
      return List.of(Row.of(KEY, Figure.of(weekdays.days())));
    }
    return rows((Metered) control);
  }

  private static List<Row> rows(Metered meter) {
    List<Row> rows = new ArrayList<>();
    if (meter instanceof ByVolume volume) {
      rows.add(Row.of(KEY, after(volume.set())));
    } else if (meter instanceof ByHardness told) {
      rows.add(Row.of("service.told", Figure.of(told.hardness())));
      told.capacity().ifPresent(set -> rows.add(Row.of("service.capacity", Figure.of(set))));
    }
    meter.reserve().ifPresent(held -> rows.add(Row.of("service.held", Figure.of(held))));
    meter.longestDays().ifPresent(days -> rows.add(Row.of("service.latest", Figure.days(days, 0))));
    return rows;
  }

  /** As a bed runs, found or proposed. */
  static Phrase of(BedSettings bed) {
    return switch (bed.control()) {
      case CLOCK -> every(bed.days());
      case WEEKDAYS -> Phrase.of(Figure.of(bed.weekdays()));
      case METERED_AT_ONCE, METERED_AT_NIGHT -> after(bed.set());
    };
  }

  private static Phrase every(int days) {
    return Phrase.text("service.every", Phrase.of(Figure.days(days, 0)));
  }

  private static Phrase after(Volume volume) {
    return Phrase.text("service.after", Phrase.of(Figure.of(volume)));
  }
}

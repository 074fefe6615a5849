package io.github.brinewright.internal.section;

import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** What the softener in the house is, as the visit found it or as it is taken. */
final class FoundRows {
  private final FoundSoftener found;
  private final PresentSoftener present;

  FoundRows(FoundSoftener found) {
    this.found = found;
    present = found.present();
  }

  Rows rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("service.bed", bed()));
    present.rated().ifPresent(rated -> rows.add(Row.of("service.rated", Figure.of(rated))));
    rows.add(Row.of("service.age", age()));
    rows.add(Row.of("service.control", Phrase.of(found.control())));
    rows.addAll(FoundSetting.rows(present.control()));
    if (found.control() != Control.METERED_AT_ONCE) {
      rows.add(Row.of("service.hour", hour()));
    }
    rows.add(Row.of("service.each", salt()));
    if (present.regenerant() != Regenerant.SODIUM_CHLORIDE) {
      rows.add(Row.of("service.regenerant", Phrase.of(present.regenerant())));
    }
    return new Rows(
        "service.is", List.of(Phrase.text("service.is"), Phrase.text("service.found")), rows);
  }

  private Phrase bed() {
    Phrase volume = new Phrase.Bed(found.resinVolume());
    return present.resinVolume().isPresent() ? volume : taken(volume);
  }

  private Phrase age() {
    return present.ageYears().isPresent()
        ? Phrase.text("service.years", Phrase.of(Figure.of(present.ageYears().getAsInt())))
        : Phrase.text("service.unknown");
  }

  private Phrase hour() {
    int hour = present.hour().orElse(BedSettings.USUAL_HOUR);
    Phrase time = Phrase.of(Figure.of(LocalTime.of(hour, 0)));
    return present.hour().isPresent() ? time : taken(time);
  }

  /** As it was read and, where that is not a mass, as the mass that it gives. */
  private Phrase salt() {
    Phrase mass = Phrase.of(Figure.of(found.saltPerRegeneration(), 1));
    PresentSalt set = present.salt().orElse(null);
    if (set == null) {
      return found.saltKnown() ? mass : unknownSalt();
    } else if (set instanceof PresentSalt.Refill refill) {
      return Phrase.text("service.given", mass, Phrase.of(Figure.of(refill.time())));
    } else if (set instanceof PresentSalt.Dosed dosed) {
      return Phrase.text("service.dosed", mass, Phrase.of(Figure.of(dosed.dosage())));
    }
    return mass;
  }

  private Phrase unknownSalt() {
    return new Phrase.Ranged(Figure.of(found.saltPerRegeneration(), 1), saltAt(0), saltAt(1));
  }

  private Figure saltAt(double place) {
    return Figure.of(found.settings(FoundUnknowns.at(0, place)).salt(), 1);
  }

  private static Phrase taken(Phrase value) {
    return Phrase.text("service.taken", value);
  }
}

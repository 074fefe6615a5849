package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;

/** What the sheet of a present softener must say, where something is set anew. */
final class ExpectedPresentSheet extends ExpectedSheet {
  private static final String SET = "settings.controlNow/settings.setting/";
  private static final String METER = "settings.controlNow/settings.meter/";
  private static final String NOW = "settings.now";

  private final FoundSoftener found;
  private final PresentSoftener present;

  ExpectedPresentSheet(
      ServiceStudy study, Candidate candidate, ControlOptions options, Wording words) {
    super(candidate, options, words);
    found = study.found();
    present = study.present();
    control(SET, "settings.setTo");
    now();
    meter(METER);
    meterNow();
    steps();
    restsOn();
    ofHome("settings.restsOn/settings.part/");
    checks(3, 11, 12, 5, 7, 9);
    meterChecks();
    measured();
    byHandAndLater();
  }

  private boolean hadMeter() {
    return present.control() instanceof PresentControl.Metered;
  }

  private void meterChecks() {
    if (metered()) {
      checks(10);
    }
    if (metered() && !hadMeter()) {
      checks(13);
    }
  }

  private void now() {
    head(SET + NOW, words.text(NOW));
    beside("settings.kind", term(found.control()));
    if (waits()) {
      cell(SET, "settings.clock", NOW, "");
      beside("settings.hour", hour());
    }
    intervalNow();
    beside("settings.refillMinutes", refillMinutes());
    cell(SET, "settings.refillExact", NOW, "");
    beside("settings.refillWater", refillWater());
    Figure salt = Figure.of(found.saltPerRegeneration());
    beside("settings.refillSalt", found.saltKnown() ? words.figure(salt) : notKnown());
  }

  /** What is printed alike is called the same. */
  private void beside(String line, String now) {
    String key = SET + line + "/";
    boolean same = now.equals(values().get(key + "settings.setTo"));
    value(key + NOW, words.text(line), same ? words.text("settings.same") : now);
  }

  private String notKnown() {
    return words.text("settings.notKnown");
  }

  private String hour() {
    if (found.control() == Control.METERED_AT_ONCE) {
      return "–";
    }
    return present.hour().isPresent()
        ? words.figure(Figure.of(LocalTime.of(present.hour().getAsInt(), 0)))
        : notKnown();
  }

  private void intervalNow() {
    if (metered()) {
      beside("settings.longest", longest());
      empty("settings.firstLatest");
      return;
    }
    empty("settings.first");
    if (present.control() instanceof PresentControl.Clock clock) {
      beside("settings.days", days(clock.days()));
    } else if (present.control() instanceof PresentControl.Weekdays weekly) {
      beside("settings.weekdays", words.weekdays(weekly.days()));
      beside("settings.gap", days(longestGap(weekly.days())));
    }
  }

  private void empty(String line) {
    String set = words.text(line, Figure.of(words.date(options.start())));
    value(SET + line + "/" + NOW, set, "");
  }

  private String days(int days) {
    return words.figure(Figure.days(days, 0));
  }

  /** The longest run of days without one of the weekdays, over two weeks, and the one after. */
  private static int longestGap(Set<DayOfWeek> days) {
    int longest = 0;
    int without = 0;
    for (int i = 0; i < 14; i++) {
      without = days.contains(DayOfWeek.MONDAY.plus(i)) ? 0 : without + 1;
      longest = Math.max(longest, without + 1);
    }
    return longest;
  }

  private String longest() {
    return present.control() instanceof PresentControl.Metered meter
        ? meter.longestDays().map(this::days).orElse(notKnown())
        : "–";
  }

  private Optional<PresentSalt.Refill> refillFound() {
    return present.salt().orElse(null) instanceof PresentSalt.Refill refill
        ? Optional.of(refill)
        : Optional.empty();
  }

  private String refillMinutes() {
    return refillFound().map(refill -> minutes(refill.time())).orElse(notKnown());
  }

  private String refillWater() {
    return refillFound()
        .flatMap(refill -> refill.flow().map(flow -> Figure.of(flow.during(refill.time()), 1)))
        .map(words::figure)
        .orElse(notKnown());
  }

  private void meterNow() {
    if (!metered() || !(present.control() instanceof PresentControl.Metered meter)) {
      return;
    }
    head(METER + NOW, words.text(NOW));
    String volume = "–";
    String hardness = "–";
    String capacity = "–";
    if (meter instanceof PresentControl.ByVolume set) {
      volume = words.figure(Figure.of(set.set()));
    } else if (meter instanceof PresentControl.ByHardness told) {
      hardness = bothUnits(Figure.of(told.hardness()));
      capacity = told.capacity().map(Figure::of).map(this::bothUnits).orElse(notKnown());
    }
    cell(METER, "settings.meterVolume", NOW, volume);
    cell(METER, "settings.meterHardness", NOW, hardness);
    cell(METER, "settings.meterCapacity", NOW, capacity);
    String reserve = meter.reserve().map(Figure::of).map(words::figure).orElse(notKnown());
    cell(METER, "settings.meterReserve", NOW, reserve);
    if (control() == Control.METERED_AT_ONCE) {
      cell(METER, "settings.meterReserve", "settings.value", "–");
    }
  }

  private void restsOn() {
    String in = "settings.restsOn/settings.compare/";
    rests(in, "settings.resin", words.resin(found.resinVolume()));
    CycleStep backwash = cycle().part(CycleStep.Kind.BACKWASH);
    rests(in, "settings.drainNow", words.figure(Figure.of(backwash.flow(), 1)));
    rests(in, "settings.refillNow", words.figure(Figure.of(refill().rate(), 2)));
    rests(in, "settings.salt", term(present.regenerant()));
  }

  private void rests(String in, String column, String value) {
    head(in + column, words.text(column));
    value(in + "settings.compare/" + column, words.text("settings.compare"), value);
  }
}

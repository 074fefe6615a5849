package io.github.brinewright.documents;

import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalTime;

/**
 * What the sheet of a softener must say that stays as it is: here one whose meter waits for the
 * night, of which volume, hour, longest days and the mass of salt were read.
 */
final class ExpectedFoundSheet extends ExpectedSettings {
  private static final String SET = "settings.controlNow/settings.setting/";
  private static final String METER = "settings.controlNow/settings.meter/";
  private static final String NOW = "settings.now";

  private final FoundSoftener found;
  private final PresentSoftener present;

  ExpectedFoundSheet(ServiceStudy study, ControlOptions options, Wording words) {
    super(study.comparison().home(), options, words);
    found = study.found();
    present = study.present();
    head(SET + NOW, words.text(NOW));
    cell(SET, "settings.kind", NOW, term(found.control()));
    cell(SET, "settings.clock", NOW, words.text("settings.timeNow"));
    boolean read = present.hour().isPresent();
    String hour = words.figure(Figure.of(starts()));
    cell(SET, "settings.hour", NOW, read ? hour : words.text("settings.notKnown"));
    ByVolume meter = (ByVolume) present.control();
    int longest = meter.longestDays().orElseThrow();
    cell(SET, "settings.longest", NOW, words.figure(Figure.days(longest, 0)));
    String label = words.text("settings.firstLatest", Figure.of(words.date(options.start())));
    value(
        SET + "settings.firstLatest/" + NOW, label, words.date(options.start().plusDays(longest)));
    refillNow();
    head(METER + NOW, words.text(NOW));
    cell(METER, "settings.meterVolume", NOW, words.figure(Figure.of(meter.set())));
    unknown("settings.meterReserve", METER);
    steps();
    restsOn("settings.restsOn/settings.compare/");
    checks(3, 11, 12, 5, 7, 10, 9);
    measured();
    byHandAndLater();
  }

  private void unknown(String line, String in) {
    cell(in, line, NOW, words.text("settings.notKnown"));
  }

  private void refillNow() {
    PresentSalt.EachTime each = (PresentSalt.EachTime) present.salt().orElseThrow();
    unknown("settings.refillMinutes", SET);
    unknown("settings.refillWater", SET);
    cell(SET, "settings.refillSalt", NOW, words.figure(Figure.of(each.salt())));
  }

  private void restsOn(String in) {
    CycleStep backwash = cycle().part(CycleStep.Kind.BACKWASH);
    rests(in, "settings.resin", words.resin(found.resinVolume()));
    rests(in, "settings.drainNow", words.figure(Figure.of(backwash.flow(), 1)));
    rests(in, "settings.refillNow", words.figure(Figure.of(refill().rate(), 2)));
    rests(in, "settings.salt", term(present.regenerant()));
  }

  private void rests(String in, String column, String value) {
    head(in + column, words.text(column));
    value(in + "settings.compare/" + column, words.text("settings.compare"), value);
  }

  @Override
  Control control() {
    return found.control();
  }

  /** Two where it was not read. */
  @Override
  LocalTime starts() {
    return LocalTime.of(present.hour().orElse(2), 0);
  }

  @Override
  Cycle cycle() {
    return found.cycle();
  }

  @Override
  BrineRefill refill() {
    return found.refill();
  }

  @Override
  Arrangement arrangement() {
    return Arrangement.SINGLE;
  }

  @Override
  int standing() {
    return 14;
  }
}

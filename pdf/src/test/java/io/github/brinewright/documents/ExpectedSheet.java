package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.function.Supplier;

/** What a settings sheet of a candidate must say. */
class ExpectedSheet extends ExpectedSettings {
  final Design design;
  private final Schedule schedule;

  ExpectedSheet(Candidate candidate, ControlOptions options, Wording words) {
    super(candidate.design().home(), options, words);
    design = candidate.design();
    schedule = design.schedule();
  }

  /** The whole sheet of a new softener. */
  ExpectedSheet fitted() {
    control("settings.control/settings.setting/", "settings.value");
    meter("settings.control/settings.meter/");
    steps();
    fit("settings.control/settings.part/");
    checks(1, 2, 3, 4, 5, 6, 7, 8, 9);
    if (metered()) {
      checks(10);
    }
    measured();
    byHandAndLater();
    return this;
  }

  @Override
  Control control() {
    return design.setup().control();
  }

  @Override
  Cycle cycle() {
    return design.cycle();
  }

  @Override
  BrineRefill refill() {
    return design.refill();
  }

  @Override
  Arrangement arrangement() {
    return design.softener().arrangement();
  }

  @Override
  int standing() {
    if (schedule instanceof ClockSchedule clock) {
      return clock.factors().size();
    }
    return schedule instanceof WeekdaySchedule week
        ? week.fixedDays().factors().size()
        : schedule.longestDays();
  }

  final void control(String in, String column) {
    head(in + column, words.text(column));
    cell(in, "settings.kind", column, term(control()));
    if (waits()) {
      String now = control() == Control.WEEKDAYS ? "settings.dayAndTimeNow" : "settings.timeNow";
      cell(in, "settings.clock", column, words.text(now));
      cell(in, "settings.hour", column, words.figure(Figure.of(options.begins())));
    }
    interval(in, column);
    cell(in, "settings.refillMinutes", column, minutes(refill().set()));
    cell(in, "settings.refillExact", column, words.figure(Figure.of(refill().exact(), 2)));
    cell(in, "settings.refillWater", column, words.figure(Figure.of(refill().water(), 1)));
    cell(in, "settings.refillSalt", column, words.figure(Figure.of(refill().saltGiven())));
  }

  private void interval(String in, String column) {
    int most = schedule.longestDays();
    String days = words.figure(Figure.days(most, 0));
    LocalDate due = options.start().plusDays(most);
    if (schedule instanceof WeekdaySchedule week) {
      String set = served(() -> words.weekdays(week.weekdays()));
      cell(in, "settings.weekdays", column, set);
      cell(in, "settings.gap", column, served(() -> days));
      first(in, "settings.first", column, nextOf(week));
    } else if (schedule instanceof ClockSchedule) {
      cell(in, "settings.days", column, served(() -> days));
      first(in, "settings.first", column, due);
    } else {
      cell(in, "settings.longest", column, days);
      first(in, "settings.firstLatest", column, due);
    }
  }

  private LocalDate nextOf(WeekdaySchedule week) {
    LocalDate tomorrow = options.start().plusDays(1);
    return tomorrow
        .datesUntil(tomorrow.plusDays(7))
        .filter(day -> week.weekdays().contains(day.getDayOfWeek()))
        .findFirst()
        .orElseThrow();
  }

  private void first(String in, String line, String column, LocalDate due) {
    String label = words.text(line, Figure.of(words.date(options.start())));
    value(in + line + "/" + column, label, served(() -> words.date(due)));
  }

  /** A dash where the bed cannot serve the home. */
  private String served(Supplier<String> value) {
    return design.year().isPresent() ? value.get() : "–";
  }

  /** What the bed holds, with what is held back of it deducted or told besides. */
  final void meter(String in) {
    if (!(schedule instanceof MeteredSchedule meter)) {
      return;
    }
    HardnessAmount held = meter.reserve().held();
    if (held.grains() == 0) {
      head(in + "settings.value", words.text("settings.value"));
      forms(in, "settings.value", design.usable());
      return;
    }
    Volume besides = held.asWaterOf(home.compensatedHardness());
    form(in, "DEDUCTED", design.usable().minus(held), Volume.ofGallons(0));
    form(in, "SEPARATE", design.usable(), besides);
  }

  private void form(String in, String form, HardnessAmount capacity, Volume reserve) {
    String column = "settings.reserve." + form;
    String text = words.text(column);
    boolean used = form.equals(options.reserve().name());
    head(in + column, used ? words.text("settings.inUse", Figure.of(text)) : text);
    forms(in, column, capacity);
    if (design.year().isPresent()) {
      cell(in, "settings.meterReserve", column, words.figure(Figure.of(reserve)));
    }
  }

  private void forms(String in, String column, HardnessAmount capacity) {
    Figure hardness = Figure.of(home.compensatedHardness());
    cell(in, "settings.meterVolume", column, served(() -> volume(capacity)));
    cell(in, "settings.meterHardness", column, served(() -> bothUnits(hardness)));
    cell(in, "settings.meterCapacity", column, served(() -> bothUnits(Figure.of(capacity))));
  }

  private String volume(HardnessAmount capacity) {
    double gallons = capacity.grains() / home.compensatedHardness().grainsPerGallon();
    return words.figure(Figure.of(Volume.ofGallons(gallons)));
  }

  private void fit(String in) {
    boolean assumed = design.softener().resinVolumeAssumed();
    value(
        in + "settings.resin",
        words.text(assumed ? "settings.resinAssumed" : "settings.resin"),
        words.resin(design.basis().resin()));
    figure(in + "settings.backwash", Figure.of(design.flow().backwash(), 1));
    figure(in + "settings.drain", Figure.of(design.flow().drain().chosen(), 1));
    figure(in + "settings.refillFlow", Figure.of(refill().rate(), 2));
    value(in + "settings.salt", term(design.softener().regenerant()));
    design
        .softener()
        .brineTank()
        .ifPresent(
            tank -> figure(in + "settings.level", Figure.of(tank.level(refill().water()), 1)));
    ofHome(in);
  }
}

package io.github.brinewright.documents;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What every settings sheet must say, of a new softener or of one that is there. */
abstract class ExpectedSettings extends Expected {
  final HomeLoad home;
  final ControlOptions options;
  private final Wording us;

  ExpectedSettings(HomeLoad home, ControlOptions options, Wording words) {
    super(words);
    this.home = home;
    this.options = options;
    us = Wording.of(words.locale(), UnitSystem.US);
  }

  abstract Control control();

  abstract Cycle cycle();

  abstract BrineRefill refill();

  abstract Arrangement arrangement();

  LocalTime starts() {
    return options.begins();
  }

  /** Days for which the bed may stand. */
  abstract int standing();

  final boolean waits() {
    return control() != Control.METERED_AT_ONCE;
  }

  final boolean metered() {
    return control() == Control.METERED_AT_NIGHT || control() == Control.METERED_AT_ONCE;
  }

  /** A cell of a table, in a line that is labelled by its key. */
  final void cell(String table, String line, String column, String value) {
    value(table + line + "/" + column, words.text(line), value);
  }

  /** In metric words the US figure stands in brackets. */
  final String bothUnits(Figure figure) {
    String own = words.figure(figure);
    String american = us.figure(figure);
    return own.equals(american) ? own : own + " (" + american + ")";
  }

  /** As few decimals as it takes, and two at most. */
  private static int decimals(Duration time) {
    BigDecimal two = BigDecimal.valueOf(Minutes.of(time)).setScale(2, RoundingMode.HALF_UP);
    return Math.max(0, two.stripTrailingZeros().scale());
  }

  final String minutes(Duration time) {
    return words.figure(Figure.of(time, decimals(time)));
  }

  private String bare(Duration time) {
    return plain(Minutes.of(time), decimals(time));
  }

  /** Each step begins when the one before ends, and its water is its flow in its minutes. */
  final void steps() {
    Duration past = Duration.ZERO;
    double gallons = 0;
    for (CycleStep step : cycle().parts()) {
      String key = "settings.cycle/settings.cycle/Kind." + step.kind() + "/";
      step(key, term(step.kind()), past, step);
      past = past.plus(step.time());
      gallons += gallons(step);
    }
    sum(past, gallons);
    drawAndRinse();
    for (String head : List.of(begins(), "settings.minutes", "settings.flow", "settings.water")) {
      head("settings.cycle/settings.cycle/" + head, words.text(head));
    }
  }

  private String begins() {
    return waits() ? "settings.begins" : "settings.beginsAfter";
  }

  private static double gallons(CycleStep step) {
    return Minutes.of(step.time()) * step.flow().gallonsPerMinute();
  }

  private void step(String key, String label, Duration past, CycleStep step) {
    String time = waits() ? words.figure(Figure.of(starts().plus(past))) : minutes(past);
    value(key + begins(), label, time);
    value(key + "settings.minutes", label, bare(step.time()));
    value(key + "settings.flow", label, words.figure(Figure.of(step.flow(), 2)));
    value(key + "settings.water", label, water(gallons(step)));
  }

  private void sum(Duration time, double gallons) {
    String key = "settings.cycle/settings.cycle/settings.together/";
    String label = words.text("settings.together");
    value(key + begins(), label, "");
    value(key + "settings.minutes", label, bare(time));
    value(key + "settings.flow", label, "");
    value(key + "settings.water", label, water(gallons));
  }

  private void drawAndRinse() {
    CycleStep draw = cycle().part(CycleStep.Kind.BRINE_DRAW);
    CycleStep rinse = cycle().part(CycleStep.Kind.SLOW_RINSE);
    step(
        "settings.cycle/settings.cycle/settings.drawAndRinse/",
        words.text("settings.drawAndRinse"),
        cycle().part(CycleStep.Kind.BACKWASH).time(),
        new CycleStep(rinse.kind(), draw.time().plus(rinse.time()), rinse.flow()));
  }

  private String water(double gallons) {
    return words.figure(Figure.of(Volume.ofGallons(gallons), 1));
  }

  final void ofHome(String in) {
    Hardness target = home.site().target();
    if (target.grainsPerGallon() > 0) {
      figure(in + "settings.blend", Figure.of(target));
    }
    home.site().treated().ifPresent(water -> value(in + "settings.ahead", treated(water)));
  }

  final void checks(int... numbers) {
    for (int i : numbers) {
      value("settings.checks/check_" + i, words.text("settings.check" + i), "TICK []");
    }
  }

  final void measured() {
    for (String name : List.of("hardnessBefore", "hardnessAfter", "installer")) {
      line(name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT), "settings." + name);
    }
    line("date", "accept.date");
  }

  private void line(String name, String label) {
    String key = "settings.checks/" + name;
    value(key, words.text(label), "TEXT []");
    value(key + "/caption", words.text(label), words.text(label));
  }

  private void told(String key, String text) {
    value("settings.hand/notes/" + key, words.text(key), text);
  }

  final void byHandAndLater() {
    told("settings.byHand", byHand());
    told("settings.outage", words.text("settings.outage." + clock()));
    String away = metered() ? "settings.away.meter" : "settings.away.clock";
    told("settings.away", words.text(away, Figure.days(standing(), 0)));
    afterDays();
    Figure twice = Figure.roughly(refill().saltGiven().plus(refill().saltGiven()));
    told("settings.afterTwo", words.text("settings.afterTwo.text", twice));
    Figure water = Figure.of(refill().water(), 1);
    Figure set = Figure.of(minutes(refill().set()));
    told("settings.well", words.text("settings.well.text", water, set));
    told("settings.notSoft", words.text("settings.notSoft.text"));
    told("settings.saltStays", words.text("settings.saltStays.text"));
  }

  private String byHand() {
    Figure takes = Figure.of(cycle().time(), 0);
    Figure meanwhile = Figure.of(words.text("settings.meanwhile." + arrangement()));
    return waits()
        ? words.text("settings.byHand.night", Figure.of(starts()), takes, meanwhile)
        : words.text("settings.byHand.once", takes, meanwhile);
  }

  private String clock() {
    if (control() == Control.WEEKDAYS) {
      return "weekdays";
    }
    return waits() ? "clock" : "once";
  }

  private void afterDays() {
    List<String> said = new ArrayList<>();
    if (waits()) {
      said.add(words.text("settings.afterDays.time"));
    }
    double soft = Math.max(1, home.site().target().grainsPerGallon());
    said.add(words.text("settings.afterDays.soft", Figure.of(Hardness.ofGrainsPerGallon(soft))));
    if (metered()) {
      Volume three = Volume.ofGallons(3 * home.softenedExpected().gallons());
      said.add(words.text("settings.afterDays.count", Figure.roughly(three)));
    }
    String label = words.text("settings.afterDays", Figure.days(3, 0));
    value("settings.hand/notes/settings.afterDays", label, String.join(" ", said));
  }
}

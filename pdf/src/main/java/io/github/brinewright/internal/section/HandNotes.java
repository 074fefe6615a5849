package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** What is done by hand and looked at later, for whoever keeps the sheet. */
final class HandNotes {
  /** What a test of soft water may show at most: common practice. */
  private static final Hardness SOFT = Hardness.ofGrainsPerGallon(1);

  private static final int DAYS = 3;
  private static final int REGENERATIONS = 2;

  private final HomeLoad home;
  private final ControlValues values;

  HandNotes(Comparison comparison, ControlValues values) {
    home = comparison.home();
    this.values = values;
  }

  Section section() {
    return Section.of(
        "settings.hand",
        Phrase.text("settings.hand"),
        new Notes(
            List.of(
                Row.of("settings.byHand", byHand()),
                Row.of("settings.outage", Phrase.text("settings.outage." + kind())),
                Row.of("settings.away", away()),
                Row.of("settings.afterDays", label("settings.afterDays"), afterDays()),
                Row.of("settings.afterTwo", afterTwo()),
                Row.of("settings.well", well()),
                Row.of("settings.notSoft", Phrase.text("settings.notSoft.text")),
                Row.of("settings.saltStays", Phrase.text("settings.saltStays.text")))));
  }

  /** Clocks of fixed days and meters that wait have the same clock. */
  private String kind() {
    return switch (values.control()) {
      case WEEKDAYS -> "weekdays";
      case METERED_AT_ONCE -> "once";
      case CLOCK, METERED_AT_NIGHT -> "clock";
    };
  }

  private static Phrase label(String key) {
    return Phrase.text(key, Phrase.of(Figure.days(DAYS, 0)));
  }

  private Phrase byHand() {
    Phrase takes = Phrase.of(Figure.of(values.cycle().time(), 0));
    Phrase meanwhile = Phrase.text("settings.meanwhile." + values.softener().arrangement());
    return values.waits()
        ? Phrase.text(
            "settings.byHand.night", Phrase.of(Figure.of(values.begins())), takes, meanwhile)
        : Phrase.text("settings.byHand.once", takes, meanwhile);
  }

  private Phrase away() {
    String kind = values.control().metered() ? "meter" : "clock";
    return Phrase.text("settings.away." + kind, Phrase.of(values.standing()));
  }

  private Phrase afterDays() {
    List<Phrase> sentences = new ArrayList<>();
    if (values.waits()) {
      sentences.add(Phrase.text("settings.afterDays.time"));
    }
    Hardness soft = SOFT.max(home.site().target());
    sentences.add(Phrase.text("settings.afterDays.soft", Phrase.of(Figure.of(soft))));
    if (values.control().metered()) {
      Figure counted = Figure.roughly(home.softenedExpected().times(DAYS));
      sentences.add(Phrase.text("settings.afterDays.count", Phrase.of(counted)));
    }
    return Phrase.sentences(sentences);
  }

  private Phrase afterTwo() {
    Mass salt = values.refill().saltGiven().times(REGENERATIONS);
    return Phrase.text("settings.afterTwo.text", Phrase.of(Figure.roughly(salt)));
  }

  private Phrase well() {
    return Phrase.text(
        "settings.well.text",
        Phrase.of(Figure.of(values.refill().water(), 1)),
        Phrase.of(SetMinutes.figure(values.refill().set())));
  }
}

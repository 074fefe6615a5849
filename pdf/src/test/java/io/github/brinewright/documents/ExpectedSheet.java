package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.function.Supplier;

/** What a settings sheet must say. */
final class ExpectedSheet extends Expected {
  private final Candidate candidate;
  private final Design design;

  ExpectedSheet(Candidate candidate, Wording words) {
    super(words);
    this.candidate = candidate;
    design = candidate.design();
    control("settings.control/settings.setting/");
    cycle("settings.cycle/settings.cycle/");
    fit("settings.fit/settings.part/");
    startUp("settings.checks/");
  }

  private void control(String in) {
    value(in + "settings.kind", term(design.setup().control()));
    figure(in + "settings.hardness", Figure.of(design.home().compensatedHardness()));
    switch (design.setup().control()) {
      case CLOCK ->
          value(in + "settings.days", served(() -> Figure.days(design.schedule().designDays(), 0)));
      case WEEKDAYS ->
          value(
              in + "settings.weekdays",
              served(() -> Figure.of(design.bed().orElseThrow().weekdays())));
      default ->
          value(
              in + "settings.volume",
              served(() -> Figure.of(design.schedule().setVolume().orElseThrow())));
    }
    String longest =
        design.setup().control() == Control.WEEKDAYS ? "settings.gap" : "settings.longest";
    figure(in + longest, Figure.days(design.schedule().longestDays(), 0));
    if (design.setup().control() != Control.METERED_AT_ONCE) {
      value(in + "settings.hour", words.text("settings.twoAtNight"));
    }
    figure(in + "settings.refillExact", Figure.of(design.refill().exact(), 2));
    value(
        in + "settings.refillSet",
        words.text(
            "settings.refillGives",
            Figure.of(design.refill().set(), 1),
            Figure.of(design.refill().saltGiven())));
  }

  /** A dash where the bed cannot serve the home. */
  private String served(Supplier<Figure> figure) {
    return design.year().isPresent() ? words.figure(figure.get()) : "–";
  }

  private void cycle(String in) {
    double together = 0;
    Volume water = Volume.ofGallons(0);
    for (CycleStep.Kind kind : CycleStep.Kind.values()) {
      CycleStep step = design.cycle().part(kind);
      boolean refill = kind == CycleStep.Kind.BRINE_REFILL;
      double exact = Minutes.of(step.time());
      double minutes = refill ? exact : Math.ceil(Math.round(exact * 1e6) / 1e6);
      String key = in + "Kind." + kind;
      value(key + "/settings.minutes", term(kind), plain(minutes, refill ? 1 : 0));
      value(key + "/settings.flow", term(kind), words.figure(Figure.of(step.flow(), 2)));
      value(key + "/settings.water", term(kind), words.figure(Figure.of(step.water(), 1)));
      together += minutes;
      water = water.plus(step.water());
    }
    String label = words.text("settings.together");
    String key = in + "settings.together";
    value(key + "/settings.minutes", label, plain(together, 1));
    value(key + "/settings.flow", label, "");
    value(key + "/settings.water", label, words.figure(Figure.of(water, 1)));
    for (String head : new String[] {"settings.minutes", "settings.flow", "settings.water"}) {
      head(in + head, words.text(head));
    }
  }

  private void fit(String in) {
    value(in + "settings.resin", words.resin(design.basis().resin()));
    figure(in + "settings.backwash", Figure.of(design.flow().backwash(), 1));
    figure(in + "settings.drain", Figure.of(design.flow().drain().chosen(), 1));
    figure(in + "settings.refillFlow", Figure.of(design.refill().rate(), 2));
    value(in + "settings.salt", term(design.softener().regenerant()));
    candidate
        .softener()
        .brineTank()
        .ifPresent(
            tank ->
                figure(in + "settings.level", Figure.of(tank.level(design.refill().water()), 1)));
    if (design.home().site().target().grainsPerGallon() > 0) {
      figure(in + "settings.blend", Figure.of(design.home().site().target()));
    }
  }

  private void startUp(String in) {
    for (int i = 1; i <= 9; i++) {
      value(in + "check_" + i, words.text("settings.check" + i), "TICK []");
    }
    line(in + "hardness_before", "settings.hardnessBefore");
    line(in + "hardness_after", "settings.hardnessAfter");
    line(in + "installer", "settings.installer");
    line(in + "date", "accept.date");
  }

  private void line(String key, String label) {
    value(key, words.text(label), "TEXT []");
    value(key + "/caption", words.text(label), words.text(label));
  }
}

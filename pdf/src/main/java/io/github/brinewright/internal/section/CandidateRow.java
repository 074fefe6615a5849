package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.trace.Figure;
import java.util.function.BiFunction;

/** What candidates are compared by: a row of a table, with its text for each candidate. */
enum CandidateRow {
  BED("compare.bed", (kit, o) -> kit.words().resin(o.resin())),
  CONTROL("compare.control", (kit, o) -> kit.words().term(o.setup().control())),
  METHOD("compare.method", (kit, o) -> kit.words().term(o.design().basis().method())),
  USABLE("compare.usable", (kit, o) -> figure(kit, Figure.of(o.design().basis().usable()))),
  FULL("compare.full", (kit, o) -> kit.words().number(o.design().schedule().designDays(), 1)),
  EXPECTED(
      "compare.expected", (kit, o) -> kit.words().number(o.design().schedule().expectedDays(), 1)),
  SALT("compare.salt", (kit, o) -> figure(kit, Figure.of(o.salt(), 1))),
  REFILL("compare.refill", (kit, o) -> number(kit, Figure.of(o.design().refill().set(), 1))),
  SALT_YEAR("compare.saltYear", (kit, o) -> figure(kit, Figure.of(o.design().year().salt(), 0))),
  FILLINGS("compare.fillings", CandidateRow::fillings),
  CHLORIDE("compare.chloride", (kit, o) -> figure(kit, Figure.of(o.design().year().chloride(), 0))),
  WATER_YEAR("compare.waterYear", (kit, o) -> figure(kit, Figure.of(o.design().year().water()))),
  SERVICE("compare.service", CandidateRow::service),
  LOSS("compare.loss", (kit, o) -> loss(kit, o.design().flow().pressureLoss())),
  EFFICIENCY(
      "compare.efficiency", (kit, o) -> figure(kit, Figure.of(o.design().efficiency().salt()))),
  PRICE("compare.price", (kit, o) -> kit.words().about(o.quote().total())),
  YEARLY("compare.yearly", (kit, o) -> kit.words().about(o.yearly().total())),
  LIFE("compare.life", (kit, o) -> kit.words().about(o.life().total())),
  LIMITS("compare.limits", CandidateRow::limits);

  private final String key;
  private final BiFunction<Kit, Candidate, String> text;

  CandidateRow(String key, BiFunction<Kit, Candidate, String> text) {
    this.key = key;
    this.text = text;
  }

  String name(Kit kit) {
    return kit.text(key, Figure.of(kit.explained().life().years()));
  }

  String text(Kit kit, Candidate candidate) {
    return text.apply(kit, candidate);
  }

  /** Whether it sums up what stands above it. */
  boolean total() {
    return this == LIFE;
  }

  private static String figure(Kit kit, Figure figure) {
    return kit.words().figure(figure);
  }

  private static String number(Kit kit, Figure figure) {
    return kit.words().number(figure);
  }

  private static String fillings(Kit kit, Candidate candidate) {
    return candidate
        .design()
        .filling()
        .map(filling -> kit.words().number(filling.months(), 1))
        .orElse("–");
  }

  private static String service(Kit kit, Candidate candidate) {
    return number(kit, Figure.of(candidate.softener().serviceFlow()))
        + " / "
        + figure(kit, Figure.of(candidate.softener().peakServiceFlow()));
  }

  private static String loss(Kit kit, Range<Pressure> range) {
    return number(kit, Figure.of(range.low())) + "–" + figure(kit, Figure.of(range.high()));
  }

  private static String limits(Kit kit, Candidate candidate) {
    return candidate.feasible()
        ? kit.text("compare.keeps")
        : kit.text("compare.breaks", Figure.of(candidate.limitsBroken()));
  }
}

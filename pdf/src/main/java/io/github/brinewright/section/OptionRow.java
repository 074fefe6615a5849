package io.github.brinewright.section;

import io.github.brinewright.comparison.Option;
import io.github.brinewright.hydraulics.Range;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.units.Pressure;
import java.util.function.BiFunction;

/** What options are compared by: a row of a table, with its text for each option. */
enum OptionRow {
  BED("compare.bed", (kit, o) -> kit.words().resin(o.resin())),
  CONTROL("compare.control", (kit, o) -> kit.words().term(o.candidate().control())),
  METHOD("compare.method", (kit, o) -> kit.words().term(o.design().basis().method())),
  USABLE("compare.usable", (kit, o) -> figure(kit, Figure.of(o.design().basis().usable()))),
  FULL("compare.full", (kit, o) -> kit.words().number(o.design().schedule().designDays(), 1)),
  EXPECTED(
      "compare.expected", (kit, o) -> kit.words().number(o.design().schedule().expectedDays(), 1)),
  SALT("compare.salt", (kit, o) -> figure(kit, Figure.of(o.salt(), 1))),
  REFILL("compare.refill", (kit, o) -> number(kit, Figure.of(o.design().refill().set(), 1))),
  SALT_YEAR("compare.saltYear", (kit, o) -> figure(kit, Figure.of(o.design().year().salt(), 0))),
  FILLINGS("compare.fillings", OptionRow::fillings),
  CHLORIDE("compare.chloride", (kit, o) -> figure(kit, Figure.of(o.design().year().chloride(), 0))),
  WATER_YEAR("compare.waterYear", (kit, o) -> figure(kit, Figure.of(o.design().year().water()))),
  SERVICE("compare.service", OptionRow::service),
  LOSS("compare.loss", (kit, o) -> loss(kit, o.design().flow().pressureLoss())),
  EFFICIENCY(
      "compare.efficiency",
      (kit, o) -> figure(kit, Figure.of(o.design().effect().saltEfficiency()))),
  PRICE("compare.price", (kit, o) -> kit.words().about(o.quote().total())),
  YEARLY("compare.yearly", (kit, o) -> kit.words().about(o.yearly().total())),
  LIFE("compare.life", (kit, o) -> kit.words().about(o.life().total())),
  LIMITS("compare.limits", OptionRow::limits);

  private final String key;
  private final BiFunction<Kit, Option, String> text;

  OptionRow(String key, BiFunction<Kit, Option, String> text) {
    this.key = key;
    this.text = text;
  }

  String name(Kit kit) {
    return kit.text(key, Figure.of(kit.explained().life().years()));
  }

  String text(Kit kit, Option option) {
    return text.apply(kit, option);
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

  private static String fillings(Kit kit, Option option) {
    return option
        .design()
        .filling()
        .map(filling -> kit.words().number(filling.months(), 1))
        .orElse("–");
  }

  private static String service(Kit kit, Option option) {
    return number(kit, Figure.of(option.unit().serviceFlow()))
        + " / "
        + figure(kit, Figure.of(option.unit().peakServiceFlow()));
  }

  private static String loss(Kit kit, Range<Pressure> range) {
    return number(kit, Figure.of(range.low())) + "–" + figure(kit, Figure.of(range.high()));
  }

  private static String limits(Kit kit, Option option) {
    return option.feasible()
        ? kit.text("compare.keeps")
        : kit.text("compare.breaks", Figure.of(option.limitsBroken()));
  }
}

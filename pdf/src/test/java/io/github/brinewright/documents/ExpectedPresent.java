package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.PresentValue;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.joda.money.Money;

/** What the columns on the softener that is in the house must say. */
final class ExpectedPresent extends Expected {
  private static final double DAYS = 365;
  private static final int NONE_SET = 99;

  private final ServiceStudy study;
  private final Comparison comparison;
  private final SimulatedYears years;

  ExpectedPresent(ServiceStudy study, Wording words) {
    super(words);
    this.study = study;
    comparison = study.comparison();
    years = study.asFound().years();
  }

  /** Whether page one shows the recommended one beside the present softener. */
  static boolean showsRecommended(ServiceStudy study) {
    return study
        .option(Kind.REPLACED)
        .flatMap(ServiceOption::candidate)
        .equals(study.comparison().recommended());
  }

  /** The first column of a table of candidates, with all of its lines or those named. */
  void compared(String where, String... only) {
    Map<String, String> cells = cells();
    Figure span = Figure.of(terms().years());
    for (String key : only.length == 0 ? List.copyOf(cells.keySet()) : List.of(only)) {
      value(where + "/" + key + "/now", words.text(key, span), cells.get(key));
    }
    head(where + "/now", words.text("now.column"));
  }

  private Terms terms() {
    return comparison.priceList().terms();
  }

  private Map<String, String> cells() {
    Map<String, String> cells = new LinkedHashMap<>();
    Volume bed = study.found().resinVolume();
    HardnessAmount holds = study.found().usable();
    Mass each = years.bed().salt();
    Mass salt = each.times(years.regenerations().mean());
    cells.put("compare.bed", words.resin(bed));
    cells.put("compare.control", control());
    cells.put("compare.method", term(CapacityBasis.Method.DOSAGE_CURVE));
    cells.put("compare.usable", words.figure(Figure.of(holds)));
    cells.put("compare.full", plain(fullDays(), 1));
    cells.put("compare.expected", plain(DAYS / years.regenerations().mean(), 1));
    cells.put("compare.salt", words.figure(Figure.of(each, 1)));
    cells.put("compare.refill", plain(Minutes.of(study.found().refill().set()), 1));
    cells.put("compare.saltYear", words.figure(Figure.of(salt, 0)));
    cells.put("compare.fillings", "–");
    double chloride = study.present().regenerant().chlorideShare();
    cells.put("compare.chloride", words.figure(Figure.of(salt.times(chloride), 0)));
    cells.put("compare.waterYear", words.figure(Figure.of(water(years))));
    cells.put("compare.hard", hardWithDays());
    cells.put("compare.service", flow(bed, 5) + " / " + words.figure(Figure.of(gpm(bed, 10))));
    cells.put("compare.loss", "–");
    double efficiency = holds.grains() / each.pounds();
    cells.put(
        "compare.efficiency", words.figure(Figure.of(SaltEfficiency.ofGrainsPerPound(efficiency))));
    cells.put("compare.price", "–");
    cells.put("compare.yearly", words.about(Money.total(study.asFound().costLines().values())));
    cells.put("compare.life", words.about(life()));
    cells.put("compare.limits", "–");
    cells.put("compare.margins", "–");
    return cells;
  }

  private static FlowRate gpm(Volume bed, double perCubicFoot) {
    return FlowRate.ofGallonsPerMinute(perCubicFoot * bed.cubicFeet());
  }

  private String flow(Volume bed, double perCubicFoot) {
    return words.number(Figure.of(gpm(bed, perCubicFoot)));
  }

  private static Volume water(SimulatedYears of) {
    return of.bed().water().times(of.regenerations().mean());
  }

  private static Volume hard(SimulatedYears of) {
    return Volume.ofGallons(of.hardGallons().mean() + of.cycleGallons().mean());
  }

  private String hardWithDays() {
    double days = hard(years).ratioTo(comparison.home().softenedExpected());
    return words.text("compare.hardOf", Figure.of(hard(years), 0), Figure.days(days, 1));
  }

  private String control() {
    PresentControl control = study.present().control();
    String name = term(study.found().control());
    return control instanceof PresentControl.Weekdays set
        ? words.text("compare.weekdays", Figure.of(name), Figure.of(set.days()))
        : name;
  }

  private double fullDays() {
    PresentControl control = study.present().control();
    if (control instanceof PresentControl.Clock clock) {
      return clock.days();
    } else if (control instanceof PresentControl.Weekdays weekly) {
      return longestGap(weekly.days());
    }
    PresentControl.Metered meter = (PresentControl.Metered) control;
    Volume starts = study.found().startsAfter().orElseThrow();
    double days = starts.ratioTo(comparison.home().softenedDesign());
    return Math.min(days, meter.longestDays().orElse(NONE_SET));
  }

  private static int longestGap(Set<DayOfWeek> days) {
    int longest = 0;
    for (DayOfWeek from : days) {
      int gap = 1;
      while (!days.contains(from.plus(gap))) {
        gap++;
      }
      longest = Math.max(longest, gap);
    }
    return longest;
  }

  /** Each line × its factor, rounded as prices are; nothing is bought. */
  private Money life() {
    Money sum = study.asFound().cost().multipliedBy(0);
    for (CostKind kind : CostKind.values()) {
      boolean water = kind == CostKind.WATER || kind == CostKind.SEWER;
      double rise =
          water
              ? comparison.tariff().escalation().water()
              : comparison.tariff().escalation().salt();
      double factor = PresentValue.escalating(terms().discountRate(), rise, terms().years());
      sum =
          sum.plus(
              study
                  .asFound()
                  .costLines()
                  .get(kind)
                  .multipliedBy(
                      BigDecimal.valueOf(factor).setScale(6, RoundingMode.HALF_EVEN),
                      RoundingMode.HALF_EVEN));
    }
    return sum;
  }

  /** The first column of the costs of a year. */
  void costs(String where) {
    study
        .asFound()
        .costLines()
        .forEach(
            (kind, money) ->
                value(where + "/CostKind." + kind + "/now", term(kind), words.about(money)));
    value(
        where + "/cost.total/now",
        words.text("cost.total"),
        words.about(Money.total(study.asFound().costLines().values())));
    head(where + "/now", words.text("now.column"));
  }

  /** Head and cost of the first column of the year; the rest is said as of any control. */
  void year(String where) {
    Map<CostKind, Money> lines = study.asFound().costLines();
    Money running =
        lines.get(CostKind.SALT).plus(lines.get(CostKind.WATER)).plus(lines.get(CostKind.SEWER));
    value(where + "/year.cost/now", words.text("year.cost"), words.about(running));
    head("changes/causes/now", words.text("now.column"));
    head(where + "/now", words.text("now.column"));
  }

  /** The table of page one: what there is, and what is advised or offered in its place. */
  void pageOne() {
    for (ServiceOption option : study.options()) {
      Kind kind = option.kind();
      boolean shown =
          kind == Kind.AS_FOUND
              || kind == Kind.REPLACED
              || (kind == Kind.SET_RIGHT && study.advice() != Advice.LEAVE)
              || (kind == Kind.METERED && study.advice() == Advice.ADD_METER);
      if (shown) {
        column(option);
      }
    }
  }

  private void column(ServiceOption option) {
    String key = "Kind." + option.kind();
    SimulatedYears of = option.years();
    Map<String, Function<SimulatedYears, String>> cells = new LinkedHashMap<>();
    cells.put("every.days", y -> words.figure(Figure.days(DAYS / y.regenerations().mean(), 1)));
    cells.put(
        "compare.saltYear",
        y -> words.figure(Figure.of(y.bed().salt().times(y.regenerations().mean()), 0)));
    cells.put("compare.waterYear", y -> words.figure(Figure.of(water(y))));
    cells.put("every.hard", y -> words.figure(Figure.of(hard(y), 0)));
    cells.put("now.cost", y -> words.about(Money.total(option.costLines().values())));
    cells.put("compare.price", y -> price(option));
    cells.forEach(
        (row, cell) -> value("opening/now/" + row + "/" + key, words.text(row), cell.apply(of)));
    head("opening/now/" + key, columnHead(option));
  }

  private String price(ServiceOption option) {
    return option.kind() == Kind.AS_FOUND
        ? "–"
        : option
            .price()
            .map(price -> words.money(price.toBigMoney()))
            .orElse(words.text("service.unpriced"));
  }

  private String columnHead(ServiceOption option) {
    String name =
        switch (option.kind()) {
          case AS_FOUND -> words.text("now.column");
          case SET_RIGHT -> words.text("now.Kind.SET_RIGHT");
          case METERED -> words.text("now.Kind.METERED");
          case REPLACED -> option.candidate().map(Candidate::softener).orElseThrow().name();
        };
    boolean advised =
        switch (study.advice()) {
          case LEAVE -> option.kind() == Kind.AS_FOUND;
          case SET_RIGHT -> option.kind() == Kind.SET_RIGHT;
          case ADD_METER -> option.kind() == Kind.METERED;
          case REPLACE -> option.kind() == Kind.REPLACED;
        };
    return advised ? words.text("now.advised", Figure.of(name)) : name;
  }
}

package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** The fields of a candidate under names that carry their units: a stable contract. */
final class CandidateFields {
  private final Candidate candidate;
  private final Design design;
  private final Map<String, @Nullable Object> fields = new LinkedHashMap<>();

  CandidateFields(Candidate candidate) {
    this.candidate = candidate;
    design = candidate.design();
  }

  /** The fields without lists, in their order. */
  Map<String, @Nullable Object> flat() {
    identity();
    load();
    regeneration();
    year();
    flow();
    return fields;
  }

  /** All fields. */
  Map<String, @Nullable Object> all(Wording words, OptionalInt bestInPercentOfDraws) {
    flat();
    fields.put("costPerYear", costPerYear());
    fields.put("price", price(candidate));
    fields.put("lifeCost", lifeCost());
    fields.put("cycle", design.cycle().parts().stream().map(CandidateFields::part).toList());
    fields.put("findings", findings(candidate.findings(), words));
    fields.put("margins", candidate.margins().stream().map(each -> margin(each, words)).toList());
    fields.put("marginsNear", codes(candidate.marginsNear()));
    judged(fields, candidate);
    fields.put(
        "bestInPercentOfDraws",
        bestInPercentOfDraws.isPresent() ? bestInPercentOfDraws.getAsInt() : null);
    return fields;
  }

  /** Codes of what a candidate breaks. */
  static void judged(Map<String, @Nullable Object> fields, Candidate candidate) {
    fields.put("limitsBroken", candidate.broken().stream().map(Finding::code).toList());
    fields.put("marginsBroken", codes(candidate.marginsBroken()));
  }

  private static List<String> codes(List<MarginCheck> checks) {
    return checks.stream().map(check -> check.margin().code()).toList();
  }

  private static Map<String, Object> margin(MarginCheck check, Wording words) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", check.margin().code());
    fields.put("grade", name(check.grade()));
    fields.put("excess", Numbers.of(check.excess()));
    fields.put("text", words.margin(check));
    return fields;
  }

  static List<Map<String, Object>> findings(List<Finding> findings, Wording words) {
    return findings.stream().map(finding -> finding(finding, words)).toList();
  }

  private static Map<String, Object> finding(Finding finding, Wording words) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", finding.code());
    fields.put("severity", name(finding.severity()));
    fields.put("text", words.finding(finding));
    return fields;
  }

  static String name(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private void put(String key, double value) {
    fields.put(key, Numbers.of(value));
  }

  /** A number that makes no sense where the bed cannot serve the home; null there. */
  private void putServed(String key, DoubleSupplier value) {
    fields.put(key, serves(candidate) ? Numbers.of(value.getAsDouble()) : null);
  }

  /** Whether the bed can serve the home at all, whatever other limits it breaks. */
  static boolean serves(Candidate candidate) {
    return candidate.hardWater().isPresent();
  }

  private void identity() {
    fields.put("unitId", candidate.softener().id());
    fields.put("unitName", candidate.softener().name());
    fields.put("control", name(candidate.setup().control()));
    fields.put("capacityMethod", name(design.basis().method()));
    fields.put("tanks", candidate.softener().tanks());
    fields.put("arrangement", name(candidate.softener().arrangement()));
    fields.put("saltDosageLbPerFt3", dosage(candidate));
    put("resinFt3", candidate.resin().cubicFeet());
    fields.put("feasible", candidate.feasible());
  }

  static @Nullable Object dosage(Candidate candidate) {
    return candidate
        .setup()
        .dosage()
        .map(dosage -> Numbers.of(dosage.poundsPerCubicFoot()))
        .orElse(null);
  }

  private void load() {
    HomeLoad home = design.home();
    put("compensatedHardnessGpg", home.compensatedHardness().grainsPerGallon());
    put("dailyLoadGrains", home.dailyLoad().grains());
    put("usableCapacityGrains", design.basis().usable().grains());
  }

  private void regeneration() {
    putServed("daysBetweenRegenerations", design.schedule()::designDays);
    ofYear("expectedDaysBetweenRegenerations", YearlyUse::daysBetween);
    fields.put(
        "setVolumeGal",
        design.schedule().setVolume().map(Volume::gallons).map(Numbers::of).orElse(null));
    weekdays();
    put("saltPerRegenerationLb", candidate.salt().pounds());
    put("brineRefillMinutes", Minutes.of(design.refill().exact()));
    put("brineRefillMinutesSet", Minutes.of(design.refill().set()));
    put("saltGivenLb", design.refill().saltGiven().pounds());
    put("waterPerRegenerationGal", design.cycle().water().gallons());
  }

  /** Of a clock on weekdays, where the bed can serve the home. */
  private void weekdays() {
    Optional<WeekdaySchedule> week =
        Optional.of(design.schedule())
            .filter(Schedule::feasible)
            .filter(WeekdaySchedule.class::isInstance)
            .map(WeekdaySchedule.class::cast);
    fields.put(
        "weekdays",
        week.map(each -> each.weekdays().stream().map(WeekdayClock::code).toList()).orElse(null));
    fields.put("longestGapDays", week.map(WeekdaySchedule::longestGap).orElse(null));
  }

  private void year() {
    ofYear("regenerationsPerYear", YearlyUse::regenerations);
    ofYear("saltPerYearLb", year -> year.salt().pounds());
    ofYear("waterPerYearGal", year -> year.water().gallons());
    ofYear("chlorideToDrainPerYearLb", year -> year.chloride().pounds());
    fields.put("hardWaterGalPerYear", hardWaterGallons(candidate));
    putServed("hardWaterDaysPerYear", () -> candidate.hardWaterDays().orElseThrow());
    fields.put(
        "monthsBetweenSaltFillings",
        design.filling().map(filling -> Numbers.of(filling.months())).orElse(null));
    put("sodiumAddedMgPerL", design.addedIons().sodium().milligramsPerLitre());
    put("potassiumAddedMgPerL", design.addedIons().potassium().milligramsPerLitre());
    put("grainsPerLbSalt", design.efficiency().salt().grainsPerPound());
    put("galPerThousandGrains", design.efficiency().water().gallonsPerThousandGrains());
  }

  static @Nullable Object hardWaterGallons(Candidate candidate) {
    return candidate.hardWater().map(hard -> Numbers.of(hard.total().gallons())).orElse(null);
  }

  private void ofYear(String name, ToDoubleFunction<YearlyUse> figure) {
    fields.put(
        name, design.year().map(year -> Numbers.of(figure.applyAsDouble(year))).orElse(null));
  }

  private void flow() {
    Range<Pressure> loss = design.flow().pressureLoss();
    put("peakFlowGpm", design.flow().peak().gallonsPerMinute());
    put("serviceFlowGpm", candidate.softener().serviceFlow().gallonsPerMinute());
    put("peakServiceFlowGpm", candidate.softener().peakServiceFlow().gallonsPerMinute());
    put("pressureLossPsi", loss.middle().psi());
    put("pressureLossPsiLow", loss.low().psi());
    put("pressureLossPsiHigh", loss.high().psi());
    put("backwashGpm", design.flow().backwash().gallonsPerMinute());
    put("drainFlowGpm", design.flow().drain().chosen().gallonsPerMinute());
  }

  private Map<String, @Nullable Object> costPerYear() {
    Map<String, @Nullable Object> costs = new LinkedHashMap<>();
    candidate
        .yearly()
        .lines()
        .forEach((kind, money) -> costs.put(name(kind), serves(kind) ? amount(money) : null));
    costs.put("total", served(candidate, candidate.yearly().total()));
    return costs;
  }

  /** What a bed that cannot serve the home would take of salt and water is not known. */
  private boolean serves(CostKind kind) {
    return serves(candidate) || kind == CostKind.ELECTRICITY || kind == CostKind.SERVICE;
  }

  static Map<String, Object> price(Candidate candidate) {
    Map<String, Object> price = new LinkedHashMap<>();
    price.put("equipment", amount(candidate.quote().equipment()));
    price.put("installation", amount(candidate.offer().installation()));
    price.put("tax", amount(candidate.quote().tax()));
    price.put("total", amount(candidate.quote().total()));
    price.put("deposit", amount(candidate.quote().deposit()));
    return price;
  }

  private Map<String, @Nullable Object> lifeCost() {
    Map<String, @Nullable Object> life = new LinkedHashMap<>();
    life.put("years", candidate.life().years());
    life.put("total", served(candidate, candidate.life().total()));
    return life;
  }

  static BigDecimal amount(Money money) {
    return money.getAmount();
  }

  /** An amount that rests on a year's use; null where the bed cannot serve the home. */
  static @Nullable BigDecimal served(Candidate candidate, Money money) {
    return serves(candidate) ? amount(money) : null;
  }

  private static Map<String, Object> part(CycleStep part) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", name(part.kind()));
    fields.put("minutes", Numbers.of(Minutes.of(part.time())));
    fields.put("flowGpm", Numbers.of(part.flow().gallonsPerMinute()));
    fields.put("waterGal", Numbers.of(part.water().gallons()));
    return fields;
  }
}

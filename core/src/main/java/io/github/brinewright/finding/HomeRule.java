package io.github.brinewright.finding;

import static io.github.brinewright.finding.Severity.CAUTION;
import static io.github.brinewright.finding.Severity.NOTE;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.sizing.ReadUse;
import io.github.brinewright.sizing.ReadUse.Outcome;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What else to look for in the water and the home, whatever the candidate: what decides on the
 * verdict is a {@link VerdictRule}. The raw water, unless said otherwise.
 */
public enum HomeRule implements Rule<HomeLoad> {
  /** Iron above the 0.3 mg/L that stains, outside Canada. */
  IRON_STAINS(
      NOTE,
      Sources.SECONDARY_LIMITS,
      home ->
          canada(home) ? Optional.empty() : above(home, Substance.IRON, WaterFacts.STAINING_IRON)),
  /** Iron above 0.1 mg/L in Canada. */
  IRON_ABOVE_OBJECTIVE(
      CAUTION,
      Sources.HEALTH_CANADA_IRON,
      home -> canada(home) ? above(home, Substance.IRON, 0.1) : Optional.empty()),
  /** Iron above 0.3 mg/L in soft water, which asks for no softener. */
  IRON_FILTER_ENOUGH(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home ->
          applies(VerdictRule.HARDNESS_SOFT, home)
              ? above(home, Substance.IRON, WaterFacts.STAINING_IRON)
              : Optional.empty()),
  /** Manganese above the 0.05 mg/L that stains. */
  MANGANESE_STAINS(NOTE, Sources.SECONDARY_LIMITS, home -> above(home, Substance.MANGANESE, 0.05)),
  /** Manganese above the 0.3 mg/L of an advisory of the United States, outside Canada. */
  MANGANESE_ABOVE_ADVISORY(
      CAUTION,
      Sources.EPA_MANGANESE,
      home -> canada(home) ? Optional.empty() : above(home, Substance.MANGANESE, 0.3)),
  /** Manganese above 0.12 mg/L in Canada. */
  MANGANESE_ABOVE_GUIDELINE(
      CAUTION,
      Sources.HEALTH_CANADA_MANGANESE,
      home -> canada(home) ? above(home, Substance.MANGANESE, 0.12) : Optional.empty()),
  /** A private well was not tested for manganese, and has too little iron to ask for it. */
  MANGANESE_UNKNOWN(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(
              facts(home).well()
                  && !facts(home).tested(Substance.MANGANESE)
                  && !applies(VerdictRule.MANGANESE_NOT_TESTED, home))),
  /** Nitrate above 10 mg/L as nitrogen. */
  NITRATE_HIGH(CAUTION, Sources.NITRATE_LIMIT, home -> above(home, Substance.NITRATE, 10)),
  /** The cold water was tested for hydrogen sulfide, and has little or none. */
  HYDROGEN_SULFIDE_LITTLE(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(
              facts(home).isAbove(Substance.HYDROGEN_SULFIDE, 0)
                  && !applies(VerdictRule.HYDROGEN_SULFIDE_IN_WATER, home))),
  /** Free chlorine above 0.2, up to 1 mg/L. */
  CHLORINE_PRESENT(
      NOTE,
      Sources.RESIN_AND_OXIDANTS,
      home ->
          facts(home).isAbove(Substance.FREE_CHLORINE, WaterFacts.MUCH_CHLORINE)
              ? Optional.empty()
              : above(home, Substance.FREE_CHLORINE, 0.2)),
  /** Free chlorine above 1 mg/L. */
  CHLORINE_WEARS_RESIN(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home -> above(home, Substance.FREE_CHLORINE, WaterFacts.MUCH_CHLORINE)),
  /** Any chloramine. */
  CHLORAMINE_PRESENT(
      NOTE, Sources.RESIN_AND_OXIDANTS, home -> above(home, Substance.CHLORAMINE, 0)),
  /** A pH above 8.5. */
  PH_HIGH(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(ph(home) > WaterFacts.HIGHEST_PH, Figure.of(ph(home), 1))),
  /** A pH outside 6.5 to 8.5, which may dissolve lead and copper; the plumbing is not known. */
  LEAD_AND_COPPER(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(
              ph(home) < WaterFacts.LOWEST_PH || ph(home) > WaterFacts.HIGHEST_PH,
              Figure.of(ph(home), 1))),
  /** The pH of a public supply is not known. */
  PH_UNKNOWN(
      NOTE,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(water(home).ph().isEmpty() && !applies(VerdictRule.PH_NOT_TESTED, home))),
  /** Dissolved solids above 750 mg/L. */
  SOLIDS_HIGH(
      CAUTION, Sources.TRADE_BOOKLET, home -> above(home, Substance.TOTAL_DISSOLVED_SOLIDS, 750)),
  /** Dissolved solids are not known. */
  SOLIDS_NOT_TESTED(
      NOTE,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(water(home).found(Substance.TOTAL_DISSOLVED_SOLIDS).isEmpty())),
  /** Turbidity above 1 NTU, unless it is a reason to treat the water first. */
  TURBID(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          applies(VerdictRule.TURBIDITY_HIGH, home)
              ? Optional.empty()
              : facts(home).turbidityAbove(WaterFacts.CLOUDY)),
  /** The water to soften has 61 to 120 mg/L of hardness. */
  MODERATELY_HARD(
      NOTE,
      Sources.USGS_CLASSES,
      home ->
          Rule.when(
              new WaterFacts(home.site().softenedWater()).is(HardnessClass.MODERATELY_HARD),
              Figure.of(home.site().softenedWater().hardness()))),
  /** The hardness was read off a test strip. */
  HARDNESS_BY_STRIP(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(
              water(home).hardnessMethod().filter(HardnessMethod.STRIP::equals).isPresent(),
              Figure.of(water(home).hardness()),
              Figure.of(HardnessMethod.STRIP.standardDeviation(water(home).hardness())))),
  /** Nobody says how the hardness is known. */
  HARDNESS_METHOD_UNKNOWN(
      NOTE, Sources.COMMON_PRACTICE, home -> Rule.when(water(home).hardnessMethod().isEmpty())),
  /** Measured below 50 °F, where a bed holds less than its table says. */
  WATER_COLD(
      NOTE,
      Sources.COLD_WATER,
      home ->
          Rule.when(
              water(home).temperature().isPresent() && home.temperature().fahrenheit() < 50,
              Figure.of(home.temperature()))),
  /** The temperature is not known, so the usual one is reckoned with. */
  TEMPERATURE_NOT_MEASURED(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(water(home).temperature().isEmpty(), Figure.of(HomeLoad.USUAL_TEMPERATURE))),
  /** Pressure below 30 psi, flowing where that was measured, yet enough for some softener. */
  PRESSURE_LOW(CAUTION, Sources.COMMON_PRACTICE, HomeRule::lowPressure),
  /** Static pressure above 80 psi. */
  PRESSURE_HIGH(
      CAUTION,
      Sources.PRESSURE_LIMIT,
      home ->
          home.site()
              .supply()
              .pressure()
              .filter(pressure -> pressure.exceeds(Pressure.ofPsi(80)))
              .map(pressure -> List.of(Figure.of(pressure)))),
  /** Pressure or flow of the supply is not known. */
  SUPPLY_NOT_MEASURED(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          Rule.when(
              home.site().supply().pressure().isEmpty() || home.site().supply().flow().isEmpty())),
  /** The supply gives less than the peak flow of the home. */
  SUPPLY_BELOW_PEAK(
      NOTE,
      Sources.COMMON_PRACTICE,
      home ->
          home.site()
              .supply()
              .flow()
              .filter(home.peakFlow()::exceeds)
              .map(flow -> List.of(Figure.of(flow), Figure.of(home.peakFlow())))),
  /** The fixtures count more or fewer units than the table of the code has. */
  FIXTURES_OUTSIDE_TABLE(
      CAUTION,
      Sources.FIXTURE_UNITS,
      home -> Rule.when(!home.peak().withinTable(), Figure.of(home.peak().fixtureUnits(), 1))),
  /** Only the hot water is softened. */
  HOT_WATER_ONLY(
      NOTE,
      Sources.HOT_SHARE,
      home ->
          Rule.when(
              home.site().household().softened() == SoftenedShare.HOT_WATER,
              Figure.percent(SoftenedShare.HOT_WATER.share()))),
  /** Some hardness is blended back through a bypass. */
  BLENDED(
      NOTE,
      Sources.HOME,
      home ->
          Rule.when(
              home.site().target().isPositive(),
              Figure.of(home.site().target()),
              Figure.percent(home.blend()))),
  /** The size rests on a bill. */
  SIZED_ON_BILL(
      NOTE,
      Sources.WATER_BILL,
      home -> Rule.when(home.use().designBasis() == UseBasis.BILL, Figure.of(home.use().design()))),
  /** The size rests on readings of some months. */
  SIZED_ON_READINGS(
      NOTE,
      Sources.READINGS,
      home ->
          Rule.when(
              home.use().designBasis() == UseBasis.READINGS,
              Figure.of(home.use().expected()),
              Figure.percent(home.use().likely().uncertain().coefficient()),
              Figure.of(home.use().design()))),
  /** Readings that tell nothing of the use. */
  READINGS_LEFT_OUT(
      CAUTION,
      Sources.READINGS,
      home -> Rule.when(readingsLeftOut(home), Figure.of(ReadUse.LEAST_DAYS))),
  /** The allowance for each person would cover less than three days in four. */
  ALLOWANCE_TOO_SMALL(
      NOTE,
      Sources.METER_DATA,
      home ->
          Rule.when(
              home.use().designBasis() == UseBasis.NINE_DAYS_IN_TEN,
              Figure.of(home.use().design()))),
  /** A bill more than 1.3 standard deviations above homes of its size. */
  BILL_HIGH(CAUTION, Sources.METER_DATA, home -> highUse(home, UseBasis.BILL)),
  /** Readings more than 1.3 standard deviations above homes of their size. */
  READINGS_HIGH(CAUTION, Sources.METER_DATA, home -> highUse(home, UseBasis.READINGS));

  private final Severity severity;
  private final Source source;
  private final Function<HomeLoad, Optional<List<Figure>>> condition;

  HomeRule(Severity severity, Source source, Function<HomeLoad, Optional<List<Figure>>> condition) {
    this.severity = severity;
    this.source = source;
    this.condition = condition;
  }

  /** All of them in their order. */
  static final List<Rule<HomeLoad>> RULES = List.of(values());

  @Override
  public String code() {
    return Rule.codeOf(this);
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Optional<List<Figure>> lookAt(HomeLoad home) {
    return condition.apply(home);
  }

  private static WaterAnalysis water(HomeLoad home) {
    return home.site().water();
  }

  private static WaterFacts facts(HomeLoad home) {
    return new WaterFacts(water(home));
  }

  private static boolean canada(HomeLoad home) {
    return home.site().place().isWithin(Place.CANADA);
  }

  private static boolean applies(VerdictRule rule, HomeLoad home) {
    return rule.lookAt(home).isPresent();
  }

  private static Optional<List<Figure>> above(HomeLoad home, Substance substance, double limit) {
    return facts(home).above(substance, limit);
  }

  /** A neutral one where it was not tested. */
  private static double ph(HomeLoad home) {
    return water(home).ph().orElse(7);
  }

  private static boolean readingsLeftOut(HomeLoad home) {
    return EnumSet.of(Outcome.TOO_FEW_DAYS, Outcome.COUNTER_STOOD_STILL)
        .contains(ReadUse.of(home.site()).outcome());
  }

  private static Optional<List<Figure>> highUse(HomeLoad home, UseBasis basis) {
    return home.use()
        .usualForSize()
        .filter(usual -> home.use().expectedBasis() == basis)
        .filter(usual -> home.use().deviationsAboveUsual() > WaterFacts.UNUSUAL_DEVIATIONS)
        .map(usual -> List.of(Figure.of(home.use().expected()), Figure.of(usual)));
  }

  private static Optional<List<Figure>> lowPressure(HomeLoad home) {
    return home.site()
        .supply()
        .pressureInUse()
        .filter(Pressure.ofPsi(30)::exceeds)
        .filter(pressure -> !applies(VerdictRule.PRESSURE_BELOW_ANY, home))
        .map(pressure -> List.of(Figure.of(pressure)));
  }
}

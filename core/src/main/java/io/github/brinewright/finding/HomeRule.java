package io.github.brinewright.finding;

import static io.github.brinewright.finding.Severity.CAUTION;
import static io.github.brinewright.finding.Severity.NOTE;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What to look for in the water and the home, whatever the candidate. */
public enum HomeRule implements Rule<HomeLoad> {
  /** A test found bacteria. */
  BACTERIA_FOUND(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(water(home).bacteria() == BacteriaResult.FOUND)),
  /** A private well was not tested for bacteria. */
  BACTERIA_NOT_TESTED(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(well(home) && water(home).bacteria() == BacteriaResult.NOT_DONE)),
  /** Iron above 5 mg/L, more than a bed should take. */
  IRON_ABOVE_BED(CAUTION, Sources.COMMON_PRACTICE, home -> above(home, Substance.IRON, 5)),
  /** More than 0.3 mg/L of the iron is rust particles already. */
  IRON_OXIDISED(CAUTION, Sources.COMMON_PRACTICE, HomeRule::oxidisedIron),
  /** Iron above the 0.3 mg/L that stains. */
  IRON_STAINS(NOTE, Sources.SECONDARY_LIMITS, home -> above(home, Substance.IRON, 0.3)),
  /** A private well was not tested for iron. */
  IRON_NOT_TESTED(CAUTION, Sources.COMMON_PRACTICE, home -> untestedWell(home, Substance.IRON)),
  /** Manganese above the 0.05 mg/L that stains. */
  MANGANESE_STAINS(NOTE, Sources.SECONDARY_LIMITS, home -> above(home, Substance.MANGANESE, 0.05)),
  /** A private well was not tested for manganese. */
  MANGANESE_NOT_TESTED(
      CAUTION, Sources.COMMON_PRACTICE, home -> untestedWell(home, Substance.MANGANESE)),
  /** Any hydrogen sulfide. */
  HYDROGEN_SULFIDE_PRESENT(
      CAUTION, Sources.COMMON_PRACTICE, home -> above(home, Substance.HYDROGEN_SULFIDE, 0)),
  /** Free chlorine above 1 mg/L. */
  CHLORINE_HARMS_RESIN(
      CAUTION, Sources.COMMON_PRACTICE, home -> above(home, Substance.FREE_CHLORINE, 1)),
  /** A pH outside 6.5 to 8.5. */
  PH_OUTSIDE(
      CAUTION,
      Sources.COMMON_PRACTICE,
      home -> {
        double ph = water(home).ph().orElse(7);
        return Rule.when(ph < 6.5 || ph > 8.5, Figure.of(ph, 1));
      }),
  /** The pH is not known. */
  PH_NOT_TESTED(NOTE, Sources.COMMON_PRACTICE, home -> Rule.when(water(home).ph().isEmpty())),
  /** Dissolved solids above 750 mg/L. */
  SOLIDS_HIGH(
      CAUTION, Sources.TRADE_BOOKLET, home -> above(home, Substance.TOTAL_DISSOLVED_SOLIDS, 750)),
  /** Dissolved solids are not known. */
  SOLIDS_NOT_TESTED(
      NOTE,
      Sources.COMMON_PRACTICE,
      home -> Rule.when(water(home).found(Substance.TOTAL_DISSOLVED_SOLIDS).isEmpty())),
  /** The water counts as soft, below 60 mg/L. */
  WATER_ALREADY_SOFT(
      CAUTION,
      Sources.USGS_CLASSES,
      home ->
          Rule.when(
              HardnessClass.of(water(home).hardness()) == HardnessClass.SOFT,
              Figure.of(water(home).hardness()))),
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
  /** Supply pressure below 30 psi. */
  PRESSURE_LOW(CAUTION, Sources.COMMON_PRACTICE, home -> pressure(home, 0, 30)),
  /** Supply pressure above 80 psi. */
  PRESSURE_HIGH(CAUTION, Sources.PRESSURE_LIMIT, home -> pressure(home, 80.001, 1e6)),
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
  /** The bill shows more use than the allowance for each person, so the size rests on it. */
  BILL_ABOVE_ALLOWANCE(
      NOTE,
      Sources.WATER_BILL,
      home -> Rule.when(home.use().designBasis() == UseBasis.BILL, Figure.of(home.use().design())));

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

  private static boolean well(HomeLoad home) {
    return water(home).source() == WaterSource.PRIVATE_WELL;
  }

  private static Optional<List<Figure>> above(HomeLoad home, Substance substance, double limit) {
    Concentration allowed = Concentration.ofMilligramsPerLitre(limit);
    return water(home)
        .found(substance)
        .filter(found -> found.exceeds(allowed))
        .map(found -> List.of(Figure.of(found), Figure.of(allowed)));
  }

  private static Optional<List<Figure>> untestedWell(HomeLoad home, Substance substance) {
    return Rule.when(well(home) && water(home).found(substance).isEmpty());
  }

  private static Optional<List<Figure>> oxidisedIron(HomeLoad home) {
    Concentration total = water(home).foundOrNone(Substance.IRON);
    Concentration dissolved = water(home).found(Substance.DISSOLVED_IRON).orElse(total);
    Concentration oxidised = total.minus(dissolved);
    return Rule.when(oxidised.milligramsPerLitre() > 0.3, Figure.of(oxidised), Figure.of(total));
  }

  private static Optional<List<Figure>> pressure(HomeLoad home, double low, double high) {
    return home.site()
        .supply()
        .pressure()
        .filter(p -> p.psi() >= low && p.psi() < high)
        .map(p -> List.of(Figure.of(p)));
  }
}

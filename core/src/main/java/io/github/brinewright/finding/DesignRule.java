package io.github.brinewright.finding;

import static io.github.brinewright.finding.Severity.CAUTION;
import static io.github.brinewright.finding.Severity.NOTE;
import static io.github.brinewright.finding.Severity.STOP;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.PeakMethod;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * What to look for in one candidate at one home: limits that are never sold below, and what is
 * worth a word. What a dealer would rather keep, but may give up at a price, are margins of {@code
 * comparison}.
 */
public enum DesignRule implements Rule<DesignRule.Subject> {
  /** The bed does not hold the load of one design day. Essential. */
  CAPACITY_BELOW_LOAD(STOP, Sources.DEFINITION, (design, limits) -> belowLoad(design)),
  /** A day's reserve leaves a night control nothing to use. Essential. */
  NO_ROOM_FOR_RESERVE(STOP, Sources.RESERVE, (design, limits) -> noReserve(design)),
  /**
   * The peak flow loads the bed's area with more than 20 gpm/ft². Only a peak that was measured or
   * follows from fixtures: a rule of thumb stops nothing.
   */
  BED_OVERLOADED(STOP, Sources.COMMON_PRACTICE, (design, limits) -> overloaded(design)),
  /** At peak flow less is left than {@link Limits#leastPressure()}. */
  PRESSURE_LEFT_TOO_LOW(
      STOP, Sources.ERGUN, (design, limits) -> pressureLeft(design, limits.leastPressure())),
  /** The backwash needs more than the supply gives. */
  BACKWASH_ABOVE_SUPPLY(STOP, Sources.RICHARDSON_ZAKI, (design, limits) -> backwash(design)),
  /** California: a clock where the softener drains to a sewer. */
  DEMAND_CONTROL_REQUIRED(
      STOP,
      Sources.CALIFORNIA,
      (design, limits) ->
          Rule.when(underCalifornianLaw(design) && !design.setup().control().metered())),
  /** California: no certificate of 4,000 grains a pound where the softener drains to a sewer. */
  CERTIFICATE_REQUIRED(STOP, Sources.CALIFORNIA, (design, limits) -> certificateMissing(design)),
  /** The bed is less deep than {@link Limits#leastBedDepth()}. */
  BED_SHALLOW(
      NOTE,
      Sources.COMMON_PRACTICE,
      (design, limits) ->
          Rule.when(
              limits.leastBedDepth().exceeds(design.flow().bedDepth()),
              Figure.of(design.flow().bedDepth()),
              Figure.of(limits.leastBedDepth()))),
  /** Less room above the bed than {@link Limits#leastFreeboard()}. */
  FREEBOARD_SMALL(
      CAUTION,
      Sources.COMMON_PRACTICE,
      (design, limits) -> {
        double freeboard = design.softener().vessel().freeboard(design.softener().resinVolume());
        return Rule.when(
            freeboard < limits.leastFreeboard(),
            Figure.percent(freeboard),
            Figure.percent(limits.leastFreeboard()));
      }),
  /** The flow lies beyond what the formula of the pressure loss was made for. */
  FLOW_OUTSIDE_FORMULA(
      CAUTION,
      Sources.ERGUN,
      (design, limits) -> Rule.when(!design.flow().withinErgun(), Figure.of(design.flow().peak()))),
  /** The largest drain flow in stock is too small for the backwash. */
  DRAIN_FLOW_TOO_SMALL(
      CAUTION,
      Sources.RICHARDSON_ZAKI,
      (design, limits) ->
          Rule.when(
              !design.flow().drain().enough(),
              Figure.of(design.flow().drain().needed()),
              Figure.of(design.flow().drain().chosen()))),
  /** The refill stands too high in the brine tank. */
  BRINE_TANK_TOO_SMALL(STOP, Sources.COMMON_PRACTICE, (design, limits) -> brineTank(design)),
  /** More regeneration water a year than the 10,000 gal that a softener is said to waste. */
  REGENERATION_WATER_HIGH(
      NOTE,
      Sources.WATERSENSE,
      (design, limits) ->
          design
              .year()
              .map(YearlyUse::water)
              .filter(water -> water.gallons() > 10_000)
              .map(water -> List.of(Figure.of(water), Figure.of(Volume.ofGallons(10_000))))),
  /**
   * More often than one sewerage district asks of homes on its sewers: see {@link Sources#MMSD}.
   */
  INTERVAL_BELOW_SEWER_ADVICE(NOTE, Sources.MMSD, (design, limits) -> sewerAdvice(design)),
  /** The longer backwash is used, to carry iron out. */
  CYCLE_FOR_IRON(
      NOTE,
      Sources.SECONDARY_LIMITS,
      (design, limits) ->
          Rule.when(
              design.cycle().plan() == CyclePlan.IRON_BEARING,
              Figure.of(design.cycle().plan().backwash(), 0),
              Figure.of(CyclePlan.EVERYDAY.backwash(), 0))),
  /** More than 60 mg/L of sodium in the softened water. */
  SODIUM_MAY_BE_TASTED(NOTE, Sources.EPA_SODIUM, (design, limits) -> sodium(design)),
  /** The softener in the house runs on potassium chloride, this one on sodium chloride. */
  SODIUM_FOR_POTASSIUM(
      CAUTION,
      Sources.STOICHIOMETRY,
      (design, limits) ->
          Rule.when(insteadOfPotassium(design), Figure.of(design.addedIons().sodium(), 0))),
  /** A meter that falls short of the elective efficiency rating. */
  EFFICIENCY_BELOW_RATING(NOTE, Sources.NSF_44, (design, limits) -> belowRating(design)),
  /** The steps of the refill setting give over a tenth more salt than wanted. */
  REFILL_COARSE(NOTE, Sources.DEFINITION, (design, limits) -> coarseRefill(design)),
  /** The bed could run longer than the longest interval. */
  LONGEST_INTERVAL(NOTE, Sources.CLOCK_DAYS, (design, limits) -> longestInterval(design)),
  /** The volume of the bed is only guessed from its rating. */
  RESIN_VOLUME_ASSUMED(
      NOTE,
      Sources.COMMON_PRACTICE,
      (design, limits) ->
          Rule.when(
              design.softener().resinVolumeAssumed(),
              Figure.of(design.softener().resinVolume().cubicFeet(), 2),
              Figure.of(design.softener().resinVolume().litres(), 0)));

  /**
   * What a design rule looks at.
   *
   * @param design the candidate at the home
   * @param limits the dealer's limits
   */
  public record Subject(Design design, Limits limits) {}

  private final Severity severity;
  private final Source source;
  private final BiFunction<Design, Limits, Optional<List<Figure>>> condition;

  DesignRule(
      Severity severity,
      Source source,
      BiFunction<Design, Limits, Optional<List<Figure>>> condition) {
    this.severity = severity;
    this.source = source;
    this.condition = condition;
  }

  private static final SaltEfficiency CALIFORNIAN = SaltEfficiency.ofGrainsPerPound(4_000);

  private static final FlowVelocity MOST_LOADING = FlowVelocity.ofGallonsPerMinutePerSquareFoot(20);

  /** All of them in their order. */
  static final List<Rule<Subject>> RULES = List.of(values());

  /** A bed that cannot serve the home or has nothing left to set is never sold. */
  private static final Set<DesignRule> ESSENTIAL =
      EnumSet.of(CAPACITY_BELOW_LOAD, NO_ROOM_FOR_RESERVE);

  @Override
  public String code() {
    return Rule.codeOf(this);
  }

  @Override
  public boolean essential() {
    return ESSENTIAL.contains(this);
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
  public Optional<List<Figure>> lookAt(Subject subject) {
    return condition.apply(subject.design(), subject.limits());
  }

  /** Every bed that is not feasible breaks this or the next: none is left out without a word. */
  private static Optional<List<Figure>> belowLoad(Design design) {
    return Rule.when(
        !design.feasible() && !holdsADay(design),
        Figure.of(design.usable()),
        Figure.of(design.dailyLoad()),
        Figure.of(bedFor(design, 1).cubicFeet(), 1),
        Figure.of(bedFor(design, 1).litres(), 0));
  }

  private static boolean holdsADay(Design design) {
    return design.usable().compareTo(design.dailyLoad()) >= 0;
  }

  private static Volume bedFor(Design design, int days) {
    double share = design.dailyLoad().ratioTo(design.usable());
    return design.softener().resinVolume().times(days * share);
  }

  private static Optional<List<Figure>> noReserve(Design design) {
    return Rule.when(
        !design.feasible() && holdsADay(design),
        Figure.of(design.usable()),
        Figure.of(bedFor(design, 2).cubicFeet(), 1),
        Figure.of(bedFor(design, 2).litres(), 0));
  }

  private static Optional<List<Figure>> longestInterval(Design design) {
    int longest = Math.min(design.schedule().longestDays(), Schedule.LONGEST_DAYS);
    double days = design.year().map(YearlyUse::daysBetween).orElse(0.0);
    return Rule.when(days >= longest - 1e-9, Figure.days(longest, 0));
  }

  private static Optional<List<Figure>> overloaded(Design design) {
    Area area = design.softener().vessel().area();
    FlowVelocity loading = area.velocityOf(design.flow().peak());
    return Rule.when(
        design.home().peak().method() != PeakMethod.BATHROOMS && loading.exceeds(MOST_LOADING),
        Figure.of(design.flow().peak()),
        Figure.of(loading, 0),
        Figure.of(MOST_LOADING, 0));
  }

  /** The district reckons with 40 gal a person; a private well stands where sewers do not go. */
  private static Optional<List<Figure>> sewerAdvice(Design design) {
    HomeLoad home = design.home();
    Volume assumed = Volume.ofGallons(40).times(home.site().household().people());
    double designDays = design.usable().ratioTo(design.dailyLoad());
    double days = designDays * home.use().design().ratioTo(assumed);
    return Rule.when(
        sewered(home) && design.feasible() && days < 3, Figure.days(days, 1), Figure.days(3, 0));
  }

  private static boolean sewered(HomeLoad home) {
    return home.site().water().source() == WaterSource.PUBLIC_SUPPLY;
  }

  private static boolean underCalifornianLaw(Design design) {
    return sewered(design.home()) && design.home().site().place().isWithin(Place.of("US-CA"));
  }

  private static Optional<List<Figure>> certificateMissing(Design design) {
    boolean certified =
        design
            .softener()
            .certifiedEfficiency()
            .filter(stated -> stated.compareTo(CALIFORNIAN) >= 0)
            .isPresent();
    return Rule.when(underCalifornianLaw(design) && !certified, Figure.of(CALIFORNIAN));
  }

  private static Optional<List<Figure>> backwash(Design design) {
    FlowRate needed = design.flow().backwash();
    return design
        .home()
        .site()
        .supply()
        .flow()
        .filter(needed::exceeds)
        .map(flow -> List.of(Figure.of(needed), Figure.of(flow)));
  }

  private static Optional<List<Figure>> pressureLeft(Design design, Pressure least) {
    Pressure loss = design.flow().pressureLoss().high();
    return design
        .home()
        .site()
        .supply()
        .pressureInUse()
        .map(pressure -> pressure.minus(loss).max(Pressure.ofPsi(0)))
        .filter(least::exceeds)
        .map(left -> List.of(Figure.of(left), Figure.of(loss)));
  }

  private static Optional<List<Figure>> brineTank(Design design) {
    Volume refill = design.refill().water();
    return design
        .softener()
        .brineTank()
        .filter(tank -> !tank.holds(refill))
        .map(tank -> List.of(Figure.of(refill, 1), Figure.of(tank.level(refill))));
  }

  /** EPA advises 30 to 60 mg/L so that sodium is not tasted; nobody drinks the hot water. */
  private static Optional<List<Figure>> sodium(Design design) {
    Concentration raw = design.home().site().water().foundOrNone(Substance.SODIUM);
    Concentration total = raw.plus(design.addedIons().sodium());
    boolean drunk = design.home().removedFromColdWater().isPositive();
    return Rule.when(drunk && total.milligramsPerLitre() > 60, Figure.of(total, 0));
  }

  private static boolean insteadOfPotassium(Design design) {
    boolean potassium =
        design
            .home()
            .site()
            .present()
            .filter(present -> present.regenerant() == Regenerant.POTASSIUM_CHLORIDE)
            .isPresent();
    return potassium && design.basis().regenerant() == Regenerant.SODIUM_CHLORIDE;
  }

  private static Optional<List<Figure>> belowRating(Design design) {
    double grains = design.efficiency().salt().grainsPerPound();
    double gallons = design.efficiency().water().gallonsPerThousandGrains();
    return Rule.when(
        design.setup().control().metered() && (grains < 3_350 || gallons > 5),
        Figure.of(design.efficiency().salt()),
        Figure.of(design.efficiency().water()));
  }

  private static Optional<List<Figure>> coarseRefill(Design design) {
    Mass wanted = design.basis().saltPerRegeneration();
    Mass given = design.refill().saltGiven();
    return Rule.when(given.ratioTo(wanted) > 1.1, Figure.of(given), Figure.of(wanted));
  }
}

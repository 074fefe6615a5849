package io.github.brinewright.sizing;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.ColdWater;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Softener;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Works out setups for one home; the flow through a softener is worked out once for all its
 * settings. May be shared between threads.
 */
public final class Sizer {
  /**
   * Iron from which the longer backwash and the shorter interval are chosen: the secondary limit of
   * 40 CFR 143.3.
   */
  /** A regeneration and the three hours in which brine saturates take less than this of a day. */
  private static final double UNTIL_TWIN_IS_READY = 0.25;

  private static final Concentration IRON_BEARING = Concentration.ofMilligramsPerLitre(0.3);

  private static final double NINE_OF_TEN = 0.9;
  private static final double HOURS_A_DAY = 24;

  /** The longest interval with iron above 0.3 mg/L, under any control: common practice. */
  public static final int LONGEST_DAYS_WITH_IRON = 7;

  private final HomeLoad home;
  private final double reserveRisk;
  private final ColdWater cold;
  private final boolean twinLoaded;
  private final HardWaterForecast forecast;
  private final Map<Softener, BedFlow> flows;

  /**
   * A sizer for a home; delayed controls hold back one design day.
   *
   * @param home what the home asks for
   */
  public Sizer(HomeLoad home) {
    this(home, 0);
  }

  /**
   * A sizer for a home.
   *
   * @param home what the home asks for
   * @param reserveRisk share of regenerations in which a delayed control may run out, 0.0001 to
   *     0.5; 0 to hold back one design day
   * @throws IllegalArgumentException outside that range
   */
  public Sizer(HomeLoad home, double reserveRisk) {
    this(home, reserveRisk, ColdWater.USUAL);
  }

  /**
   * A sizer for a home.
   *
   * @param home what the home asks for
   * @param reserveRisk share of regenerations in which a delayed control may run out, 0.0001 to
   *     0.5; 0 to hold back one design day
   * @param cold capacity that is left in cold water
   * @throws IllegalArgumentException outside these ranges
   */
  public Sizer(HomeLoad home, double reserveRisk, ColdWater cold) {
    this(home, reserveRisk, cold, true, HardWaterForecast.of(DemandModel.of(home)));
  }

  private Sizer(
      HomeLoad home,
      double reserveRisk,
      ColdWater cold,
      boolean twinLoaded,
      HardWaterForecast forecast) {
    this.home = home;
    this.reserveRisk =
        reserveRisk == 0 ? 0 : DailyVariation.RISK.require("risk of running out", reserveRisk);
    this.cold = cold;
    this.twinLoaded = twinLoaded;
    this.forecast = forecast;
    flows = new ConcurrentHashMap<>();
  }

  /** As if the water of a twin's regeneration loaded no bed. */
  Sizer withoutLoadOfTwin() {
    return new Sizer(home, reserveRisk, cold, false, forecast);
  }

  /**
   * Works out one setup in full. It may turn out not to be feasible.
   *
   * @param setup a softener and its setting
   * @return the design, feasible or not
   */
  public Design design(Setup setup) {
    Softener softener = setup.softener();
    BedFlow flow = flows.computeIfAbsent(softener, each -> new BedFlow(each, home));
    return new Design(home, setup, flow, regeneration(setup, flow));
  }

  private Regeneration regeneration(Setup setup, BedFlow flow) {
    Softener softener = setup.softener();
    CapacityBasis basis = cold.in(home.temperature(), setup.basis());
    TankLoad tank = new TankLoad(home, softener);
    BrineRefill refill =
        new BrineRefill(
            basis,
            softener.refillRate(),
            softener.refillStep(),
            home.site().brineTankTemperature());
    Cycle cycle = cycle(softener, refill);
    Capacity capacity = capacity(softener, basis, cycle);
    Schedule schedule = schedule(setup, capacity.usable(), tank);
    Optional<ForecastYear> year =
        schedule.feasible()
            ? Optional.of(bed(setup, capacity.usable(), schedule, refill, cycle)).map(this::year)
            : Optional.empty();
    return new Regeneration(basis, tank, capacity, schedule, refill, cycle, year);
  }

  /** The cycle of a softener whose refill is as it was found. */
  Cycle cycle(Softener softener, BrineRefill refill) {
    BedFlow flow = flows.computeIfAbsent(softener, each -> new BedFlow(each, home));
    return new Cycle(plan(softener), softener.resinVolume(), flow.drain().chosen(), refill);
  }

  /** Share of the capacity that is left in water as cold as the home's. */
  double shareInColdWater() {
    return cold.share(home.temperature());
  }

  private Capacity capacity(Softener softener, CapacityBasis basis, Cycle cycle) {
    return twinLoaded && softener.arrangement() == Arrangement.TWIN_ALTERNATING
        ? Capacity.besideTwin(basis.usable(), cycle.water(), home.compensatedHardness())
        : Capacity.whole(basis.usable());
  }

  private Schedule schedule(Setup setup, HardnessAmount usable, TankLoad tank) {
    Control control = setup.control();
    if (control.timed()) {
      ClockSchedule fixedDays = fixedDays(usable, tank);
      return control == Control.CLOCK ? fixedDays : new WeekdaySchedule(fixedDays);
    }
    return MeteredSchedule.of(control, usable)
        .reserve(reserve(control, tank))
        .longestDays(longestDays())
        .leastDays(leastDays(setup.softener()))
        .serving(home.compensatedHardness(), tank.design());
  }

  private ClockSchedule fixedDays(HardnessAmount usable, TankLoad tank) {
    List<Double> factors = home.use().likely().factors(longestDays(), NINE_OF_TEN);
    return new ClockSchedule(usable, tank.dailyLoad(), tank.expectedLoad(), factors);
  }

  private static double leastDays(Softener softener) {
    return softener.arrangement() == Arrangement.TWIN_ALTERNATING ? UNTIL_TWIN_IS_READY : 1;
  }

  private Reserve reserve(Control control, TankLoad tank) {
    if (control != Control.METERED_AT_NIGHT) {
      return Reserve.NONE;
    }
    Hardness hardness = home.compensatedHardness();
    return reserveRisk > 0
        ? Reserve.forRisk(reserveRisk, home.use().likely(), tank.expected(), hardness)
        : Reserve.ofDay(tank.design(), hardness);
  }

  private ForecastYear year(BedSettings bed) {
    return new ForecastYear(forecast, bed, home.use().likely());
  }

  /** All tanks that share the flow, together; one serves while another regenerates. */
  private BedSettings bed(
      Setup setup, HardnessAmount usable, Schedule schedule, BrineRefill refill, Cycle cycle) {
    Softener softener = setup.softener();
    int tanks = TankLoad.sharing(softener);
    Volume capacity = usable.asWaterOf(home.compensatedHardness());
    boolean single = softener.arrangement() == Arrangement.SINGLE;
    return new BedSettings(
        setup.control(),
        capacity.times(tanks),
        schedule.setVolume().orElse(capacity).times(tanks),
        schedule.longestDays(),
        schedule instanceof WeekdaySchedule week ? week.weekdays() : Set.of(),
        refill.saltGiven().times(tanks),
        cycle.water().times(tanks),
        single ? hours(cycle) : 0);
  }

  /** Length of a regeneration; one of more than a day counts as a day. */
  static double hours(Cycle cycle) {
    return Math.min(HOURS_A_DAY, Minutes.of(cycle.time()) / 60);
  }

  private boolean ironBearing() {
    WaterAnalysis water = home.site().softenedWater();
    return water.foundOrNone(Substance.IRON).exceeds(IRON_BEARING);
  }

  private int longestDays() {
    return ironBearing() ? LONGEST_DAYS_WITH_IRON : Schedule.LONGEST_DAYS;
  }

  private CyclePlan plan(Softener softener) {
    return softener.plan().orElse(ironBearing() ? CyclePlan.IRON_BEARING : CyclePlan.EVERYDAY);
  }
}

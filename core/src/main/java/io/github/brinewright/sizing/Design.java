package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One setup at one home, worked out in full by a {@link Sizer}, so that its parts agree. Immutable.
 */
public final class Design implements Explained {
  private final HomeLoad home;
  private final Setup setup;
  private final CapacityBasis basis;
  private final BedFlow flow;
  private final TankLoad tank;
  private final Capacity capacity;
  private final Schedule schedule;
  private final BrineRefill refill;
  private final Cycle cycle;
  private final Optional<ForecastYear> forecast;
  private final Optional<YearlyUse> year;
  private final AddedIons addedIons;
  private final Efficiency efficiency;

  Design(HomeLoad home, Setup setup, BedFlow flow, Regeneration regeneration) {
    Softener softener = setup.softener();
    this.home = home;
    this.setup = setup;
    this.flow = flow;
    basis = regeneration.basis();
    tank = regeneration.tank();
    capacity = regeneration.capacity();
    schedule = regeneration.schedule();
    refill = regeneration.refill();
    cycle = regeneration.cycle();
    forecast = regeneration.forecast();
    year =
        forecast.map(
            each ->
                new YearlyUse(
                    each.mean().regenerations(),
                    TankLoad.sharing(softener),
                    refill,
                    cycle,
                    softener.standby()));
    addedIons = new AddedIons(home.removed(), home.removedFromColdWater(), basis.regenerant());
    efficiency = new Efficiency(basis.usable(), refill.saltGiven(), cycle.water());
  }

  /** {@return what the home asks for} */
  public HomeLoad home() {
    return home;
  }

  /** {@return the softener and its setting} */
  public Setup setup() {
    return setup;
  }

  /** {@return the softener} */
  public Softener softener() {
    return setup.softener();
  }

  /**
   * {@return the one basis of capacity and salt, of one tank, in water as cold as the home's;
   * {@link Setup#basis()} is the same in warm water}
   */
  public CapacityBasis basis() {
    return basis;
  }

  /**
   * {@return what one tank of the bed holds for the home: {@link #basis()}, and of tanks that take
   * turns less what the other's regeneration takes from it}
   */
  public HardnessAmount usable() {
    return capacity.usable();
  }

  /** {@return the load of the design day on each tank} */
  public HardnessAmount dailyLoad() {
    return tank.dailyLoad();
  }

  /** {@return whether the bed serves the design day and leaves something to set} */
  public boolean feasible() {
    return schedule.feasible();
  }

  /** {@return when it regenerates} */
  public Schedule schedule() {
    return schedule;
  }

  /** {@return the salt and refill minutes} */
  public BrineRefill refill() {
    return refill;
  }

  /** {@return the steps of a regeneration} */
  public Cycle cycle() {
    return cycle;
  }

  /** {@return the pressure loss and backwash} */
  public BedFlow flow() {
    return flow;
  }

  /** {@return what a year takes; empty where the bed is not {@link #feasible()}} */
  public Optional<YearlyUse> year() {
    return year;
  }

  /**
   * {@return the hard water of a year at the mean use of the home, by cause; empty where the bed is
   * not {@link #feasible()}}
   */
  public Optional<HardWater> hardWater() {
    return forecast.map(ForecastYear::mean);
  }

  /**
   * {@return the same at the mean use that three of four such homes stay below: 1.22 × the mean,
   * with a bill 1.06 ×}
   */
  public Optional<HardWater> hardWaterHigh() {
    return forecast.map(ForecastYear::high);
  }

  /**
   * {@return the share of the regenerations that come after the bed has run out, over all that the
   * home's mean use may be; 0 to 1, dimensionless} Empty where the bed is not {@link #feasible()}.
   */
  public OptionalDouble runOutShare() {
    return forecast
        .map(each -> OptionalDouble.of(each.runOutShare()))
        .orElseGet(OptionalDouble::empty);
  }

  /**
   * {@return the bed as the day-by-day simulation needs it, all tanks that share the flow taken
   * together; empty where it is not {@link #feasible()}} A regeneration of more than a day counts
   * as a day.
   */
  public Optional<BedSettings> bed() {
    return forecast.map(ForecastYear::bed);
  }

  /** {@return the sodium or potassium that softening adds to the water} */
  public AddedIons addedIons() {
    return addedIons;
  }

  /** {@return how well salt and water are used} */
  public Efficiency efficiency() {
    return efficiency;
  }

  /**
   * {@return how long a filling of the brine tank lasts; empty when its size is not known or the
   * bed is not {@link #feasible()}}
   */
  public Optional<BrineTank.Filling> filling() {
    return softener()
        .saltStorage()
        .flatMap(storage -> year.map(each -> new BrineTank.Filling(storage, each.salt())));
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Explained part :
        List.of(
            home, basis, tank, capacity, schedule, refill, cycle, flow, addedIons, efficiency)) {
      steps.addAll(part.steps());
    }
    year.ifPresent(each -> steps.addAll(each.steps()));
    hardWater().ifPresent(each -> steps.add(hardWaterStep(each)));
    if (basis().regenerant() == Regenerant.SODIUM_CHLORIDE) {
      steps.add(handbook());
    }
    filling().ifPresent(filling -> steps.addAll(filling.steps()));
    return steps;
  }

  private static Step hardWaterStep(HardWater each) {
    return Worked.of(
            StepKind.HARD_WATER_YEAR,
            Sources.RENEWAL,
            each.runOut(),
            each.whileRegenerating(),
            Volume::plus)
        .step();
  }

  /**
   * What the refill would dissolve by the handbook instead of the round 3 lb a gallon. The refill
   * is taken at the temperature of the brine tank.
   */
  private Step handbook() {
    Temperature brine = Brine.TEMPERATURE.nearest(home.site().brineTankTemperature());
    return Worked.of(
            StepKind.SALT_BY_HANDBOOK,
            Sources.SALT_INSTITUTE,
            refill.water(),
            Brine.saltToSaturate(Volume.ofGallons(1), brine),
            (water, perGallon) -> perGallon.times(water.gallons()))
        .step();
  }

  /** Home and setup, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return setup + " at " + home.site();
  }
}

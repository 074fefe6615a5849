package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.CyclePlan;
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

/**
 * One setup at one home, worked out in full by a {@link Sizer}, so that its parts agree. Immutable.
 */
public final class Design implements Explained {
  private final HomeLoad home;
  private final Setup setup;
  private final BedFlow flow;
  private final Schedule schedule;
  private final BrineRefill refill;
  private final Cycle cycle;
  private final YearlyUse year;
  private final AddedIons addedIons;
  private final Efficiency efficiency;

  Design(HomeLoad home, Setup setup, BedFlow flow, Schedule schedule, CyclePlan plan) {
    Softener softener = setup.softener();
    CapacityBasis basis = setup.basis();
    this.home = home;
    this.setup = setup;
    this.flow = flow;
    this.schedule = schedule;
    refill = new BrineRefill(basis, softener.refillRate(), softener.refillStep());
    cycle = new Cycle(plan, softener.resinVolume(), flow.drain().chosen(), refill);
    year = new YearlyUse(schedule, refill, cycle, softener.standby());
    addedIons = new AddedIons(home.removed(), basis.regenerant());
    efficiency = new Efficiency(basis.usable(), refill.saltGiven(), cycle.water());
  }

  /** What the home asks for. */
  public HomeLoad home() {
    return home;
  }

  /** The softener and its setting. */
  public Setup setup() {
    return setup;
  }

  /** The softener. */
  public Softener softener() {
    return setup.softener();
  }

  /** The one basis of capacity and salt. */
  public CapacityBasis basis() {
    return setup.basis();
  }

  /** When it regenerates. */
  public Schedule schedule() {
    return schedule;
  }

  /** Salt and refill minutes. */
  public BrineRefill refill() {
    return refill;
  }

  /** The steps of a regeneration. */
  public Cycle cycle() {
    return cycle;
  }

  /** Pressure loss and backwash. */
  public BedFlow flow() {
    return flow;
  }

  /** What a year takes. */
  public YearlyUse year() {
    return year;
  }

  /** Sodium or potassium that softening adds to the water. */
  public AddedIons addedIons() {
    return addedIons;
  }

  /** How well salt and water are used. */
  public Efficiency efficiency() {
    return efficiency;
  }

  /** How long a filling of the brine tank lasts; empty when its size is not known. */
  public Optional<BrineTank.Filling> filling() {
    return softener().saltStorage().map(storage -> new BrineTank.Filling(storage, year.salt()));
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Explained part :
        List.of(home, basis(), schedule, refill, cycle, flow, year, addedIons, efficiency)) {
      steps.addAll(part.steps());
    }
    if (basis().regenerant() == Regenerant.SODIUM_CHLORIDE) {
      steps.add(handbook());
    }
    filling().ifPresent(filling -> steps.addAll(filling.steps()));
    return steps;
  }

  /**
   * What the refill would dissolve by the handbook instead of the round 3 lb a gallon. The refill
   * is taken at the temperature of the water, but not warmer than the tables of brine go (51.67
   * °C): the tank stands in the house and nobody heats it.
   */
  private Step handbook() {
    Temperature brine = Brine.TEMPERATURE.nearest(home.temperature());
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

package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One setup at one home, worked out in full.
 *
 * @param home what the home asks for
 * @param setup the softener and its setting
 * @param schedule when it regenerates
 * @param refill salt and refill minutes
 * @param cycle the steps of a regeneration
 * @param flow pressure loss and backwash
 * @param year what a year takes
 * @param effect sodium added and efficiency
 */
public record Design(
    HomeLoad home,
    Setup setup,
    Schedule schedule,
    BrineRefill refill,
    Cycle cycle,
    BedFlow flow,
    YearlyUse year,
    Effect effect)
    implements Explained {
  /** The softener. */
  public Softener softener() {
    return setup.softener();
  }

  /** The one basis of capacity and salt. */
  public CapacityBasis basis() {
    return setup.basis();
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Explained part : List.of(home, basis(), schedule, refill, cycle, flow, year, effect)) {
      steps.addAll(part.steps());
    }
    if (basis().regenerant() == Regenerant.SODIUM_CHLORIDE) {
      steps.add(handbook());
    }
    filling().ifPresent(filling -> steps.addAll(filling.steps()));
    return steps;
  }

  /** What the refill would dissolve by the handbook instead of the round 3 lb a gallon. */
  private Step handbook() {
    Mass perGallon = Brine.saltToSaturate(Volume.ofGallons(1), home.temperature());
    return new Step(
        StepKind.SALT_BY_HANDBOOK,
        List.of(Figure.of(refill.water(), 3), Figure.of(perGallon, 3)),
        Figure.of(perGallon.times(refill.water().gallons())),
        Sources.SALT_INSTITUTE);
  }

  /** How long a filling of the brine tank lasts; empty when its size is not known. */
  public Optional<BrineTank.Filling> filling() {
    return softener().saltStorage().map(storage -> new BrineTank.Filling(storage, year.salt()));
  }
}

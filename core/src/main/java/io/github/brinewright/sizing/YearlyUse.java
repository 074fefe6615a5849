package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * What a candidate takes in a year of expected use: regenerations × what each of them takes, with
 * the salt that the refill setting really dissolves.
 */
public final class YearlyUse implements Explained {
  private final Schedule schedule;
  private final BrineRefill refill;
  private final Cycle cycle;
  private final Power standby;

  /** Multiplies a schedule with its refill and cycle. */
  public YearlyUse(Schedule schedule, BrineRefill refill, Cycle cycle, Power standby) {
    this.schedule = schedule;
    this.refill = refill;
    this.cycle = cycle;
    this.standby = standby;
  }

  /** Regenerations of a year. */
  public double regenerations() {
    return schedule.regenerationsPerYear();
  }

  /** Salt of a year. */
  public Mass salt() {
    return refill.saltGiven().times(regenerations());
  }

  /** Regeneration water of a year, all of which goes to the drain. */
  public Volume water() {
    return cycle.water().times(regenerations());
  }

  /** Chloride of a year that goes to the drain: all of what the salt holds. */
  public Mass chloride() {
    return refill.regenerant().chlorideIn(salt());
  }

  /** Electricity of a year. */
  public Energy electricity() {
    return standby.throughoutYear();
  }

  @Override
  public List<Step> steps() {
    Figure times = Figure.of(regenerations(), 1);
    return List.of(
        new Step(
            StepKind.SALT_YEAR,
            List.of(times, Figure.of(refill.saltGiven())),
            Figure.of(salt(), 0),
            Sources.DEFINITION),
        new Step(
            StepKind.WATER_YEAR,
            List.of(times, Figure.of(cycle.water(), 1)),
            Figure.of(water(), 0),
            Sources.DEFINITION),
        new Step(
            StepKind.ELECTRICITY_YEAR,
            List.of(Figure.of(standby)),
            Figure.of(electricity(), 1),
            Sources.DEFINITION),
        new Step(
            StepKind.CHLORIDE_DISCHARGED,
            List.of(
                Figure.of(salt(), 0),
                Figure.of(refill.regenerant().chlorideIn(Mass.ofPounds(1)).pounds(), 4)),
            Figure.of(chloride(), 0),
            Sources.STOICHIOMETRY));
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * What a candidate takes in a year of expected use: regenerations × what each of them takes, with
 * the salt that the refill setting really dissolves.
 */
public final class YearlyUse implements Explained {
  private final double regenerations;
  private final Worked<Mass> salt;
  private final Worked<Volume> water;
  private final Worked<Energy> electricity;
  private final Worked<Mass> chloride;

  /** Multiplies a schedule with its refill and cycle. */
  YearlyUse(Schedule schedule, BrineRefill refill, Cycle cycle, Power standby) {
    regenerations = schedule.regenerationsPerYear();
    salt =
        Worked.of(
            StepKind.SALT_YEAR,
            Sources.DEFINITION,
            regenerations,
            refill.saltGiven(),
            (times, given) -> given.times(times));
    water =
        Worked.of(
            StepKind.WATER_YEAR,
            Sources.DEFINITION,
            regenerations,
            cycle.water(),
            (times, each) -> each.times(times));
    electricity =
        Worked.of(StepKind.ELECTRICITY_YEAR, Sources.DEFINITION, standby, Power::throughoutYear);
    chloride =
        Worked.of(
            StepKind.CHLORIDE_DISCHARGED,
            Sources.STOICHIOMETRY,
            salt(),
            refill.regenerant().chlorideShare(),
            (mass, share) -> mass.times(share));
  }

  /** Regenerations of a year; dimensionless. */
  public double regenerations() {
    return regenerations;
  }

  /** Salt of a year. */
  public Mass salt() {
    return salt.value();
  }

  /** Regeneration water of a year, all of which goes to the drain. */
  public Volume water() {
    return water.value();
  }

  /** Chloride of a year that goes to the drain: all of what the salt holds. */
  public Mass chloride() {
    return chloride.value();
  }

  /** Electricity of a year. */
  public Energy electricity() {
    return electricity.value();
  }

  @Override
  public List<Step> steps() {
    return List.of(salt.step(), water.step(), electricity.step(), chloride.step());
  }
}

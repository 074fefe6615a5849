package io.github.brinewright.sizing;

import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;

/**
 * What a candidate takes in a mean year of the home: regenerations × what each of them takes, with
 * the salt that the refill setting really dissolves.
 */
public final class YearlyUse implements Explained {
  private final int tanks;
  private final Worked<Double> regenerations;
  private final Worked<Mass> saltOfTanks;
  private final Worked<Volume> waterOfTanks;
  private final Worked<Mass> salt;
  private final Worked<Volume> water;
  private final Worked<Energy> electricity;
  private final Worked<Mass> chloride;

  /**
   * Multiplies a forecast with refill and cycle.
   *
   * @param forecast regenerations of a year
   * @param tanks that regenerate each time, one after the other
   */
  YearlyUse(double forecast, int tanks, BrineRefill refill, Cycle cycle, Power standby) {
    this.tanks = tanks;
    regenerations =
        Worked.of(
            StepKind.REGENERATIONS_YEAR,
            Sources.RENEWAL,
            CalendarYear.DAYS / forecast,
            days -> CalendarYear.DAYS / days);
    saltOfTanks =
        Worked.of(
            StepKind.SALT_OF_TANKS,
            Sources.DEFINITION,
            refill.saltGiven(),
            tanks,
            (each, number) -> each.times(number));
    waterOfTanks =
        Worked.of(
            StepKind.WATER_OF_TANKS,
            Sources.DEFINITION,
            cycle.water(),
            tanks,
            (each, number) -> each.times(number));
    salt =
        Worked.of(
            StepKind.SALT_YEAR,
            Sources.DEFINITION,
            regenerations(),
            saltOfTanks.value(),
            (times, given) -> given.times(times));
    water =
        Worked.of(
            StepKind.WATER_YEAR,
            Sources.DEFINITION,
            regenerations(),
            waterOfTanks.value(),
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

  /**
   * {@return the regenerations of a mean year, of each tank where several share the flow;
   * dimensionless}
   */
  public double regenerations() {
    return regenerations.value();
  }

  /** {@return the mean days from one regeneration to the next} */
  public double daysBetween() {
    return CalendarYear.DAYS / regenerations();
  }

  /** {@return the salt of a year} */
  public Mass salt() {
    return salt.value();
  }

  /** {@return the regeneration water of a year, all of which goes to the drain} */
  public Volume water() {
    return water.value();
  }

  /** {@return the chloride of a year that goes to the drain: all of what the salt holds} */
  public Mass chloride() {
    return chloride.value();
  }

  /** {@return the electricity of a year} */
  public Energy electricity() {
    return electricity.value();
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(regenerations.steps());
    if (tanks > 1) {
      steps.add(saltOfTanks.step());
      steps.add(waterOfTanks.step());
    }
    steps.addAll(List.of(salt.step(), water.step(), electricity.step(), chloride.step()));
    return steps;
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;
import java.util.Optional;

/**
 * Fixed days: usable capacity ÷ daily load, rounded down, at least 1 and at most 14. Example:
 * 25,600 ÷ 5,040 = 5.08 → 5 days. A clock regenerates on its day whatever was used, so its year
 * does not depend on expected use. Source: common practice.
 *
 * @param usable capacity between regenerations
 * @param dailyLoad design load; more than zero
 * @param expectedLoad of an average day; more than zero
 */
public record ClockSchedule(
    HardnessAmount usable, HardnessAmount dailyLoad, HardnessAmount expectedLoad)
    implements Schedule {
  /**
   * @throws IllegalArgumentException when the load is not more than zero
   */
  public ClockSchedule {
    Require.positive("daily load", dailyLoad);
    Require.positive("expected load", expectedLoad);
  }

  /** Days before rounding down. */
  public double exactDays() {
    return usable.ratioTo(dailyLoad);
  }

  /** The days to set. */
  public int setDays() {
    double wholeDespiteRoundOff = Math.floor(exactDays() + 1e-9);
    return (int) Math.max(1, Math.min(LONGEST_DAYS, wholeDespiteRoundOff));
  }

  @Override
  public double designDays() {
    return setDays();
  }

  @Override
  public double expectedDays() {
    return setDays();
  }

  @Override
  public double runOutShare() {
    return DailyVariation.USUAL.totalBeyond(setDays(), usable.ratioTo(expectedLoad));
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.empty();
  }

  @Override
  public boolean feasible() {
    return exactDays() >= 1 - 1e-9;
  }

  @Override
  public List<Step> steps() {
    return List.of(
        new Step(
            StepKind.CLOCK_DAYS,
            List.of(Figure.of(usable), Figure.of(dailyLoad), Figure.of(exactDays(), 2)),
            Figure.days(setDays(), 0),
            Sources.CLOCK_DAYS),
        new Step(
            StepKind.CLOCK_REGENERATIONS,
            List.of(Figure.of(setDays())),
            Figure.of(regenerationsPerYear(), 1),
            Sources.DEFINITION));
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.DayCount;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import java.util.Optional;

/**
 * Fixed days: usable capacity ÷ daily load, rounded down, at least 1 and at most 14. Example:
 * 25,600 ÷ 5,040 = 5.08 → 5 days. A clock regenerates on its day whatever was used, so its year
 * does not depend on expected use. Source: common practice.
 *
 * @param usable capacity between regenerations; more than zero
 * @param dailyLoad design load; more than zero
 * @param expectedLoad of an average day; more than zero
 * @param variation how the use of its days strays about the mean
 */
public record ClockSchedule(
    HardnessAmount usable,
    HardnessAmount dailyLoad,
    HardnessAmount expectedLoad,
    DailyVariation variation)
    implements Schedule {
  /**
   * @throws IllegalArgumentException when the capacity or a load is not more than zero
   */
  public ClockSchedule {
    Require.positive("usable capacity", usable);
    Require.positive("daily load", dailyLoad);
    Require.positive("expected load", expectedLoad);
  }

  /** Days before rounding down. */
  public double exactDays() {
    return usable.ratioTo(dailyLoad);
  }

  private Worked<DayCount> days() {
    return Worked.of(
        StepKind.CLOCK_DAYS,
        Sources.CLOCK_DAYS,
        usable,
        dailyLoad,
        exactDays(),
        (capacity, load, exact) -> new DayCount(toSet(exact)));
  }

  private Worked<Double> regenerations() {
    return Worked.of(
        StepKind.CLOCK_REGENERATIONS,
        Sources.DEFINITION,
        setDays(),
        each -> (double) CalendarYear.DAYS / each);
  }

  @Override
  public double regenerationsPerYear() {
    return regenerations().value();
  }

  private static int toSet(double exactDays) {
    double wholeDespiteRoundOff = Math.floor(exactDays + 1e-9);
    return (int) Math.max(1, Math.min(LONGEST_DAYS, wholeDespiteRoundOff));
  }

  /** The days to set; 1 to 14. */
  public int setDays() {
    return toSet(exactDays());
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
    return variation.totalBeyond(setDays(), usable.ratioTo(expectedLoad));
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
    return List.of(days().step(), regenerations().step());
  }
}

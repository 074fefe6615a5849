package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.DayCount;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fixed days: usable capacity ÷ daily load, rounded down; not more than the bed holds in nine of
 * ten cases by the mean load and the factors of some days; and not more than the longest interval.
 * Each is kept, the smallest is set, at least 1. Example: 25,600 ÷ 5,040 = 5.08 → 5 days. Source:
 * common practice; gamma sum of the days.
 *
 * @param usable capacity between regenerations; more than zero
 * @param dailyLoad design load; more than zero
 * @param meanLoad of an average day; more than zero
 * @param factors how many times the mean load the bed must hold for each of 1, 2, 3 … days; as many
 *     as the longest interval has, 1 to 14, each above 0
 */
public record ClockSchedule(
    HardnessAmount usable, HardnessAmount dailyLoad, HardnessAmount meanLoad, List<Double> factors)
    implements Schedule {
  private static final double ROUND_OFF = 1e-9;

  /**
   * Keeps its own copy of {@code factors}.
   *
   * @param usable capacity between regenerations
   * @param dailyLoad design load
   * @param meanLoad of an average day
   * @param factors how many times the mean load the bed must hold for each of 1, 2, 3 … days
   * @throws IllegalArgumentException outside the ranges above
   */
  public ClockSchedule {
    Require.positive("usable capacity", usable);
    Require.positive("daily load", dailyLoad);
    Require.positive("mean load", meanLoad);
    factors = List.copyOf(factors);
    Require.between("longest interval in days", factors.size(), 1, LONGEST_DAYS);
    factors.forEach(factor -> Require.between("factor of some days", factor, 1e-6, 1e6));
  }

  /** {@return the days at design use before rounding down} */
  public double exactDays() {
    return usable.ratioTo(dailyLoad);
  }

  private static int whole(double exact) {
    return (int) Math.floor(Math.min(exact, Integer.MAX_VALUE) + ROUND_OFF);
  }

  /** {@return the whole days that the bed holds at design use; 0 where it does not hold one} */
  public int daysAtDesignUse() {
    return whole(exactDays());
  }

  /**
   * {@return the longest interval whose use stays within the bed in nine cases of ten; 0 where not
   * even one day's does, and not above {@link #longestAllowed()}}
   */
  public int daysWithinMargin() {
    int days = 0;
    while (days < factors.size() && heldBy(days + 1) + ROUND_OFF >= days + 1) {
      days++;
    }
    return days;
  }

  /** Days that the bed holds if each takes as much as some days in nine cases of ten. */
  private double heldBy(int days) {
    return usable.ratioTo(meanLoad.times(factors.get(days - 1)));
  }

  /** {@return the longest interval allowed; 1 to 14} */
  public int longestAllowed() {
    return factors.size();
  }

  /** {@return the days to set; 1 to 14} */
  public int setDays() {
    int least = Math.min(daysAtDesignUse(), Math.min(daysWithinMargin(), longestAllowed()));
    return Math.max(1, least);
  }

  @Override
  public double designDays() {
    return feasible() ? setDays() : exactDays();
  }

  @Override
  public int longestDays() {
    return setDays();
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.empty();
  }

  @Override
  public boolean feasible() {
    return exactDays() >= 1 - ROUND_OFF;
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    steps.add(
        Worked.of(
                StepKind.CLOCK_DAYS,
                Sources.CLOCK_DAYS,
                usable,
                dailyLoad,
                exactDays(),
                (capacity, load, exact) -> new DayCount(daysAtDesignUse()))
            .step());
    int shown = Math.max(1, daysWithinMargin());
    steps.add(
        Worked.of(
                StepKind.CLOCK_DAYS_MARGIN,
                Sources.METER_DATA,
                usable,
                factors.get(shown - 1),
                meanLoad,
                heldBy(shown),
                (capacity, factor, load, exact) -> new DayCount(daysWithinMargin()))
            .step());
    steps.add(
        Worked.of(
                StepKind.CLOCK_DAYS_SET,
                Sources.CLOCK_DAYS,
                daysAtDesignUse(),
                daysWithinMargin(),
                longestAllowed(),
                (design, margin, longest) -> new DayCount(setDays()))
            .step());
    return steps;
  }
}

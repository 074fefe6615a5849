package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A clock set to weekdays: as few of them as 7 ÷ the days of a clock of the same bed, rounded up,
 * spread as evenly as a week allows. Their longest gap is then not above those days; where even one
 * day is too long, it regenerates every day. Example: a bed for a clock of 5 days → Monday,
 * Thursday. Source: common practice.
 *
 * @param fixedDays what a clock of fixed days would be set to
 */
public record WeekdaySchedule(ClockSchedule fixedDays) implements Schedule {
  private WeekdayClock clock() {
    return WeekdayClock.forGap(fixedDays.setDays());
  }

  /** {@return the weekdays to set, from Monday on} */
  public Set<DayOfWeek> weekdays() {
    return clock().days();
  }

  /** {@return the days of the longest gap between two of the weekdays; 1 to 7} */
  public int longestGap() {
    return clock().longestGap();
  }

  @Override
  public double designDays() {
    return feasible() ? longestGap() : fixedDays.exactDays();
  }

  @Override
  public int longestDays() {
    return longestGap();
  }

  /** The next of the weekdays, not the day itself. */
  @Override
  public LocalDate firstDue(LocalDate start) {
    return clock().firstAfter(start);
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.empty();
  }

  @Override
  public boolean feasible() {
    return fixedDays.feasible();
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(fixedDays.steps());
    steps.add(
        Worked.of(
                StepKind.WEEKDAYS_SET,
                Sources.CLOCK_DAYS,
                fixedDays.setDays(),
                (double) DayOfWeek.values().length / fixedDays.setDays(),
                (days, exact) -> Figure.of(WeekdayClock.forGap(days).days()))
            .step());
    return steps;
  }
}

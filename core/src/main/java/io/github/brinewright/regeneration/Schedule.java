package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import java.util.Optional;

/**
 * What a control is set to. What a year comes to is forecast from it and from the days of the home.
 */
public sealed interface Schedule extends Explained
    permits ClockSchedule, WeekdaySchedule, MeteredSchedule {
  /** The longest interval allowed, so that the bed does not stand too long: common practice. */
  int LONGEST_DAYS = 14;

  /**
   * {@return the days between regenerations at design use, zero or more; a clock's are whole, of
   * weekdays the longest gap} Of a bed that does not hold a day the part of it that it holds.
   */
  double designDays();

  /**
   * {@return the days after which it regenerates in any case; 1 to 14, of a clock those set, of
   * weekdays their longest gap}
   */
  int longestDays();

  /**
   * {@return the volume after which a meter starts a regeneration; empty for a clock, and where the
   * bed is not {@link #feasible()}}
   */
  Optional<Volume> setVolume();

  /** {@return whether the bed serves the design day and leaves a setting above zero} */
  boolean feasible();
}

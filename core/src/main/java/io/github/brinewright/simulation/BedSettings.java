package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What the day-by-day simulation needs to know of a bed and its control.
 *
 * @param control what starts a regeneration
 * @param capacity soft water between two regenerations; above 0, up to 10^9 gal
 * @param set volume after which a meter regenerates, 0 to the capacity; the capacity for a clock
 * @param days after which it regenerates in any case; 1 to 365
 * @param weekdays on which a clock regenerates instead of after fixed days; empty for fixed days
 * @param salt of a regeneration; zero or more
 * @param water of a regeneration; zero or more
 * @param cycleHours length of a regeneration, during which water passes hard; 0 to 24
 */
public record BedSettings(
    Control control,
    Volume capacity,
    Volume set,
    int days,
    Set<DayOfWeek> weekdays,
    Mass salt,
    Volume water,
    double cycleHours) {
  private static final double LARGEST_GALLONS = 1e9;
  private static final double HOURS_A_DAY = 24;

  /**
   * Keeps its own copy of {@code weekdays}.
   *
   * @param control what starts a regeneration
   * @param capacity soft water between two regenerations
   * @param set volume after which a meter regenerates, 0 to the capacity
   * @param days after which it regenerates in any case
   * @param weekdays on which a clock regenerates instead of after fixed days
   * @param salt of a regeneration
   * @param water of a regeneration
   * @param cycleHours length of a regeneration, during which water passes hard
   * @throws IllegalArgumentException outside the ranges above, or when a meter has weekdays
   */
  public BedSettings {
    Require.positive("capacity of the bed", capacity);
    Require.between("capacity of the bed in gal", capacity.gallons(), 0, LARGEST_GALLONS);
    Require.between("set volume in gal", set.gallons(), 0, capacity.gallons());
    Require.between("days between regenerations", days, 1, 365);
    Require.notNegative("salt of a regeneration", salt);
    Require.notNegative("water of a regeneration", water);
    Require.between("hours of a regeneration", cycleHours, 0, HOURS_A_DAY);
    if (control.metered() && !weekdays.isEmpty()) {
      throw new IllegalArgumentException(
          "weekdays " + weekdays + " are set, but a meter takes none; leave them empty");
    }
    Set<DayOfWeek> copy = EnumSet.noneOf(DayOfWeek.class);
    copy.addAll(weekdays);
    weekdays = Collections.unmodifiableSet(copy);
  }

  /**
   * {@return the same bed, with a clock set to weekdays; the longest gap between them decides its
   * risk}
   *
   * @param chosen at least one
   * @throws IllegalArgumentException when there is none
   */
  public BedSettings onWeekdays(Set<DayOfWeek> chosen) {
    if (chosen.isEmpty()) {
      throw new IllegalArgumentException("a clock set to weekdays needs at least one");
    }
    return new BedSettings(Control.CLOCK, capacity, capacity, 7, chosen, salt, water, cycleHours);
  }
}

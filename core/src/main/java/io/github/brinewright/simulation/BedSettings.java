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
 * <p>A meter counts all water that has passed since its last regeneration. Set to more than the bed
 * holds, it lets the bed run out and hard water pass until its volume, or its days, are reached.
 *
 * @param control what starts a regeneration
 * @param capacity soft water between two regenerations; above 0, up to 10^9 gal
 * @param set volume after which a meter regenerates, 0 to 10^9 gal; the capacity for a clock
 * @param days after which it regenerates in any case; 1 to 365
 * @param weekdays on which {@link Control#WEEKDAYS} regenerates, at least one; empty for all others
 * @param salt of a regeneration; zero or more
 * @param water of a regeneration; zero or more
 * @param cycleHours length of a regeneration, during which water passes hard; 0 to 24
 * @param hour of the day at which a clock or a meter that waits regenerates; 0 to 23
 */
public record BedSettings(
    Control control,
    Volume capacity,
    Volume set,
    int days,
    Set<DayOfWeek> weekdays,
    Mass salt,
    Volume water,
    double cycleHours,
    int hour) {
  /** Hour at which a control regenerates unless it is set otherwise: 2 a.m.; common practice. */
  public static final int USUAL_HOUR = 2;

  private static final double LARGEST_GALLONS = 1e9;
  private static final double HOURS_A_DAY = 24;
  private static final int LAST_HOUR = 23;
  private static final int WEEK = 7;

  /**
   * Keeps its own copy of {@code weekdays}.
   *
   * @param control what starts a regeneration
   * @param capacity soft water between two regenerations
   * @param set volume after which a meter regenerates
   * @param days after which it regenerates in any case
   * @param weekdays on which {@link Control#WEEKDAYS} regenerates
   * @param salt of a regeneration
   * @param water of a regeneration
   * @param cycleHours length of a regeneration, during which water passes hard
   * @param hour at which a clock or a meter that waits regenerates
   * @throws IllegalArgumentException outside the ranges above, without weekdays where they are
   *     needed, or with some where they are not taken
   */
  public BedSettings {
    Require.positive("capacity of the bed", capacity);
    Require.between("capacity of the bed in gal", capacity.gallons(), 0, LARGEST_GALLONS);
    Require.between("set volume in gal", set.gallons(), 0, LARGEST_GALLONS);
    Require.between("days between regenerations", days, 1, 365);
    Require.notNegative("salt of a regeneration", salt);
    Require.notNegative("water of a regeneration", water);
    Require.between("hours of a regeneration", cycleHours, 0, HOURS_A_DAY);
    Require.between("hour of the regeneration", hour, 0, LAST_HOUR);
    requireFitting(control, weekdays);
    Set<DayOfWeek> copy = EnumSet.noneOf(DayOfWeek.class);
    copy.addAll(weekdays);
    weekdays = Collections.unmodifiableSet(copy);
  }

  /**
   * A bed that regenerates at {@link #USUAL_HOUR} unless its meter does so at once.
   *
   * @param control what starts a regeneration
   * @param capacity soft water between two regenerations; above 0, up to 10^9 gal
   * @param set volume after which a meter regenerates, 0 to 10^9 gal; the capacity for a clock
   * @param days after which it regenerates in any case; 1 to 365
   * @param weekdays on which {@link Control#WEEKDAYS} regenerates; empty for all others
   * @param salt of a regeneration; zero or more
   * @param water of a regeneration; zero or more
   * @param cycleHours length of a regeneration, during which water passes hard; 0 to 24
   * @throws IllegalArgumentException outside the ranges above, without weekdays where they are
   *     needed, or with some where they are not taken
   */
  public BedSettings(
      Control control,
      Volume capacity,
      Volume set,
      int days,
      Set<DayOfWeek> weekdays,
      Mass salt,
      Volume water,
      double cycleHours) {
    this(control, capacity, set, days, weekdays, salt, water, cycleHours, USUAL_HOUR);
  }

  private static void requireFitting(Control control, Set<DayOfWeek> weekdays) {
    if (control == Control.WEEKDAYS) {
      Require.someOf("weekdays of the clock", weekdays);
    } else if (!weekdays.isEmpty()) {
      throw new IllegalArgumentException(
          "weekdays "
              + weekdays
              + " are set, but "
              + (control.metered() ? "a meter" : "a clock of fixed days")
              + " takes none; leave them empty");
    }
  }

  /**
   * {@return the same bed, with a clock set to weekdays; the longest gap between them decides its
   * risk}
   *
   * @param chosen at least one
   * @throws IllegalArgumentException when there is none
   */
  public BedSettings onWeekdays(Set<DayOfWeek> chosen) {
    return new BedSettings(
        Control.WEEKDAYS, capacity, capacity, WEEK, chosen, salt, water, cycleHours, hour);
  }

  /**
   * {@return a bed that holds another volume and is set as this one is; a clock's whole capacity is
   * its set volume}
   *
   * @param other soft water between two regenerations; above 0, up to 10^9 gal
   * @throws IllegalArgumentException outside that range
   */
  public BedSettings holding(Volume other) {
    return new BedSettings(
        control,
        other,
        control.metered() ? set : other,
        days,
        weekdays,
        salt,
        water,
        cycleHours,
        hour);
  }

  /**
   * {@return the same bed, whose meter starts after another volume}
   *
   * @param other 0 to 10^9 gal
   * @throws IllegalArgumentException outside that range, or under a clock
   */
  public BedSettings startingAfter(Volume other) {
    if (!control.metered()) {
      throw new IllegalArgumentException("a clock starts after days, and not after " + other);
    }
    return new BedSettings(control, capacity, other, days, weekdays, salt, water, cycleHours, hour);
  }

  /**
   * {@return the same bed, whose clock or waiting meter regenerates at another hour}
   *
   * @param other 0 to 23
   * @throws IllegalArgumentException outside that range
   */
  public BedSettings withHour(int other) {
    return new BedSettings(control, capacity, set, days, weekdays, salt, water, cycleHours, other);
  }
}

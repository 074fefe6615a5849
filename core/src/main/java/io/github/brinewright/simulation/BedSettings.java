package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Set;

/**
 * What the day-by-day simulation needs to know of a bed and its control.
 *
 * @param control what starts a regeneration
 * @param capacity soft water between two regenerations
 * @param set volume after which a meter regenerates; the capacity for a clock
 * @param days after which it regenerates in any case
 * @param weekdays on which a clock regenerates instead of after fixed days; empty for fixed days
 * @param salt of a regeneration
 * @param water of a regeneration
 * @param cycleHours length of a regeneration, during which water passes hard
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
  /** Keeps its own copy of {@code weekdays}. */
  public BedSettings {
    weekdays = weekdays.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(weekdays));
  }

  /** The settings of a design. */
  public static BedSettings of(Design design) {
    Volume capacity = design.basis().usable().asWaterOf(design.home().compensatedHardness());
    int days =
        design.schedule() instanceof ClockSchedule clock ? clock.setDays() : Schedule.LONGEST_DAYS;
    return new BedSettings(
        design.setup().control(),
        capacity,
        design.schedule().setVolume().orElse(capacity).max(Volume.ofGallons(0)),
        days,
        Set.of(),
        design.refill().saltGiven(),
        design.cycle().water(),
        Minutes.of(design.cycle().time()) / 60);
  }

  /** The same bed, with a clock set to weekdays; the longest gap between them decides its risk. */
  public BedSettings onWeekdays(Set<DayOfWeek> chosen) {
    return new BedSettings(Control.CLOCK, capacity, capacity, 7, chosen, salt, water, cycleHours);
  }
}

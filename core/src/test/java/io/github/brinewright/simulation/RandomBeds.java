package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Homes that use 100 gal a day in the mean, and beds, drawn at random. */
final class RandomBeds {
  static final double MEAN = 100;
  private static final double SMALLEST = 1.2;
  private static final double LARGEST = 20;

  private final Random random;

  RandomBeds(long seed) {
    random = new Random(seed);
  }

  long seed() {
    return random.nextLong();
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Median home and the 10-90 % of all in the open meter data; weekends up to a quarter more. */
  DemandModel home() {
    double weekend = between(1, 1.25);
    double workday = (7 - 2 * weekend) / 5;
    List<Double> weekdays = List.of(workday, workday, workday, workday, workday, weekend, weekend);
    boolean stays = random.nextBoolean();
    return new DemandModel(
        Volume.ofGallons(MEAN),
        new DailyVariation(between(0.32, 0.70), between(0, 0.3), weekdays),
        new YearDays(
            stays ? 0 : random.nextInt(60), stays ? 0 : random.nextInt(40), between(1, 2.5)));
  }

  BedSettings bed() {
    double capacity = SMALLEST * Math.pow(LARGEST / SMALLEST, random.nextDouble());
    double hours = between(0.75, 1.75);
    return switch (random.nextInt(4)) {
      case 0 -> clock(hours);
      case 1 -> weekdays(hours);
      case 2 -> bed(Control.METERED_AT_ONCE, capacity, capacity, 14, hours);
      default -> {
        double reserve = between(0, Math.min(3, 0.6 * capacity));
        yield bed(Control.METERED_AT_NIGHT, capacity, capacity - reserve, 14, hours);
      }
    };
  }

  /** As somebody set it by guess: at any hour, a meter to up to three times what the bed holds. */
  BedSettings bedAsFound() {
    double capacity = SMALLEST * Math.pow(LARGEST / SMALLEST, random.nextDouble());
    double hours = between(0.75, 1.75);
    double set = capacity * between(1, 3);
    int longest = List.of(7, 14, 30, 60).get(random.nextInt(4));
    BedSettings bed =
        switch (random.nextInt(4)) {
          case 0 -> clock(hours);
          case 1 -> weekdays(hours);
          case 2 -> bed(Control.METERED_AT_ONCE, capacity, set, longest, hours);
          default -> bed(Control.METERED_AT_NIGHT, capacity, set, longest, hours);
        };
    return bed.withHour(random.nextInt(24));
  }

  private BedSettings clock(double hours) {
    int days = 1 + random.nextInt(14);
    double capacity = Math.max(SMALLEST, days * between(0.9, 1.7));
    return bed(Control.CLOCK, capacity, capacity, days, hours);
  }

  private BedSettings weekdays(double hours) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (int i = random.nextInt(4); i >= 0; i--) {
      days.add(DayOfWeek.of(1 + random.nextInt(7)));
    }
    double capacity = between(SMALLEST, 12);
    return bed(Control.CLOCK, capacity, capacity, 7, hours).onWeekdays(days);
  }

  static BedSettings bed(
      Control control, double capacity, double set, int days, double cycleHours) {
    return new BedSettings(
        control,
        Volume.ofGallons(MEAN * capacity),
        Volume.ofGallons(MEAN * set),
        days,
        control == Control.WEEKDAYS ? Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY) : Set.of(),
        Mass.ofPounds(6),
        Volume.ofGallons(60),
        cycleHours);
  }
}

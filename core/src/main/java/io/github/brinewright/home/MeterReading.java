package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.List;

/**
 * What a water meter stood at on a day.
 *
 * @param date of the reading
 * @param counter 0 to 100,000,000 gal
 */
public record MeterReading(LocalDate date, Volume counter) {
  /** What a counter may stand at: 0 to 100,000,000 gal. */
  public static final Bounds<Volume> COUNTER =
      Bounds.of(Volume.ofGallons(0), Volume.ofGallons(100_000_000));

  /**
   * @param date of the reading
   * @param counter what the meter stood at
   * @throws IllegalArgumentException outside the range above
   */
  public MeterReading {
    COUNTER.require("meter reading", counter);
  }

  /** At least two, in the order of their dates, the counter never falling. */
  static List<MeterReading> requireRising(List<MeterReading> read) {
    if (read.size() < 2) {
      throw new IllegalArgumentException(
          "there is one meter reading, but use follows from two; add another, or leave it out");
    }
    for (int i = 1; i < read.size(); i++) {
      requireRising(read.get(i - 1), read.get(i));
    }
    return List.copyOf(read);
  }

  private static void requireRising(MeterReading before, MeterReading after) {
    if (!after.date.isAfter(before.date)) {
      throw new IllegalArgumentException(
          "the meter reading of "
              + after.date
              + " stands after that of "
              + before.date
              + "; put them in the order of their dates");
    }
    if (after.counter.compareTo(before.counter) < 0) {
      throw new IllegalArgumentException(
          "the meter stood at "
              + after.counter
              + " on "
              + after.date
              + ", below "
              + before.counter
              + " on "
              + before.date
              + "; read it again, or begin anew after a change of meter");
    }
  }
}

package io.github.brinewright.demand;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.stream.Stream;

/**
 * What a home used from one reading to the next.
 *
 * @param first day that is counted
 * @param days that are counted; 1 to 4,000
 * @param used volume of these days; 0 to 100,000,000 gal
 */
public record ReadInterval(LocalDate first, int days, Volume used) {
  /** Days from one reading to the next: 1 to 4,000. */
  public static final Bounds<Integer> DAYS = Bounds.of(1, 4_000);

  /** Volumes from one reading to the next: 0 to 100,000,000 gal. */
  public static final Bounds<Volume> USED =
      Bounds.of(Volume.ofGallons(0), Volume.ofGallons(100_000_000));

  /**
   * @param first day that is counted
   * @param days that are counted
   * @param used volume of these days
   * @throws IllegalArgumentException outside the ranges above
   */
  public ReadInterval {
    DAYS.require("days between two readings", days);
    USED.require("volume between two readings", used);
  }

  /** {@return the first day that is no longer counted} */
  public LocalDate end() {
    return first.plusDays(days);
  }

  /** Its days in their order. */
  Stream<LocalDate> dates() {
    return first.datesUntil(end());
  }
}

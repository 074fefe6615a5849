package io.github.brinewright.quantity;

import java.time.Duration;

/** Minutes with a fraction, to and from {@link Duration}. */
public final class Minutes {
  private static final double NANOS_PER_MINUTE = 60e9;

  private static final double MOST = 100.0 * CalendarYear.HOURS * 60;

  private Minutes() {}

  /**
   * {@return the number of minutes in {@code time}, with its fraction}
   *
   * @param time any length of time
   */
  public static double of(Duration time) {
    return time.toNanos() / NANOS_PER_MINUTE;
  }

  /**
   * {@return a duration of the given number of minutes, to the nearest nanosecond}
   *
   * @param minutes a finite number, up to 100 years either way
   * @throws IllegalArgumentException outside that range
   */
  public static Duration toDuration(double minutes) {
    Require.between("minutes", minutes, -MOST, MOST);
    return Duration.ofNanos(Math.round(minutes * NANOS_PER_MINUTE));
  }
}

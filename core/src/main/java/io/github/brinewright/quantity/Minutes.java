package io.github.brinewright.quantity;

import java.time.Duration;

/** Minutes with a fraction, to and from {@link Duration}. */
public final class Minutes {
  private static final double NANOS_PER_MINUTE = 60e9;

  private Minutes() {}

  /** The number of minutes in {@code time}, with its fraction. */
  public static double of(Duration time) {
    return time.toNanos() / NANOS_PER_MINUTE;
  }

  /**
   * A duration of the given number of minutes, to the nearest nanosecond.
   *
   * @param minutes any finite number
   */
  public static Duration toDuration(double minutes) {
    return Duration.ofNanos(Math.round(minutes * NANOS_PER_MINUTE));
  }
}

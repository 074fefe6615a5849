package io.github.brinewright.trace;

/**
 * A number of days that a formula takes or gives; it may have a fraction.
 *
 * @param count of days; zero or more
 */
public record DayCount(double count) {
  /**
   * @param count of days
   * @throws IllegalArgumentException when negative, infinite or not a number
   */
  public DayCount {
    if (!(count >= 0 && Double.isFinite(count))) {
      throw new IllegalArgumentException("days are " + count + ", but must not be negative");
    }
  }
}

package io.github.brinewright.quantity;

/** The year that everything is reckoned for: 365 days. */
public final class CalendarYear {
  /** Days of a year. */
  public static final int DAYS = 365;

  /** Hours of a year: 8,760. */
  public static final int HOURS = 24 * DAYS;

  private CalendarYear() {}
}

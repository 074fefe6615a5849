package io.github.brinewright.demand;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.CalendarYear;

/**
 * The days of a home's year. The stretch of days away and that with guests lie each at a random
 * place; days on which both fall are counted as away.
 *
 * @param away days on which nobody is at home; 0 to 300
 * @param guests days of the stretch with guests; 0 to 300
 * @param guestFactor use on these days for one of an ordinary day; 1 to 5; dimensionless
 */
public record YearDays(int away, int guests, double guestFactor) {
  /** Share of the ordinary use that goes on while everybody is away; dimensionless. */
  public static final double LEFT_WHILE_AWAY = 0.02;

  /** Days of a stretch that are accepted: 0 to 300. */
  public static final Bounds<Integer> STRETCH = Bounds.of(0, 300);

  /** Factors for guests that are accepted: 1 to 5; dimensionless. */
  public static final Bounds<Double> GUEST_FACTOR = Bounds.of(1.0, 5.0);

  /** Nobody away, no guests. */
  public static final YearDays ALWAYS_AT_HOME = new YearDays(0, 0, 1);

  /**
   * @param away days on which nobody is at home
   * @param guests days of the stretch with guests
   * @param guestFactor use on these days for one of an ordinary day
   * @throws IllegalArgumentException outside the ranges above
   */
  public YearDays {
    STRETCH.require("days away", away);
    STRETCH.require("days with guests", guests);
    GUEST_FACTOR.require("guest factor", guestFactor);
  }

  /** {@return the days on which both stretches fall, in the mean over their places} */
  public double both() {
    double both = 0;
    if (away > 0 && guests > 0) {
      for (int day = 0; day < CalendarYear.DAYS; day++) {
        both += chance(day, away) * chance(day, guests);
      }
    }
    return both;
  }

  /** Chance that a day falls within a stretch. */
  private static double chance(int day, int length) {
    int places = CalendarYear.DAYS - length + 1;
    int covering = Math.min(Math.min(day + 1, CalendarYear.DAYS - day), Math.min(length, places));
    return (double) covering / places;
  }

  /** {@return the days with guests on which somebody is at home, in the mean} */
  public double guestsAtHome() {
    return guests - both();
  }

  /** {@return the days neither away nor with guests, in the mean} */
  public double ordinary() {
    return CalendarYear.DAYS - away - guestsAtHome();
  }

  /** Use of a mean day of the year for one of an ordinary day. */
  double meanOfYear() {
    return meanOfYear(ordinary(), guestsAtHome(), guestFactor, away);
  }

  /** The same of days that are counted. */
  static double meanOfYear(double ordinary, double guests, double factor, int away) {
    return (ordinary + guests * factor + away * LEFT_WHILE_AWAY) / CalendarYear.DAYS;
  }

  /** Share of the days of the year on which somebody is at home. */
  double shareAtHome() {
    return 1 - (double) away / CalendarYear.DAYS;
  }

  /** {@return the share of the days at home that are with guests; 0 to 1, dimensionless} */
  public double guestShare() {
    return guestsAtHome() / (CalendarYear.DAYS - away);
  }

  /** {@return whether every day of the year is an ordinary one} */
  public boolean allOrdinary() {
    return away == 0 && (guests == 0 || guestFactor == 1);
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.CalendarYear;

/**
 * The parts of a year, counted once.
 *
 * @param away days
 * @param guests days of the stretch with guests
 * @param guestFactor use on these for one of an ordinary day
 * @param guestsAtHome days with guests on which somebody is at home, in the mean
 * @param ordinary days neither away nor with guests, in the mean
 */
record Stretches(int away, int guests, double guestFactor, double guestsAtHome, double ordinary) {
  static final int YEAR = CalendarYear.DAYS;

  static Stretches of(YearDays days) {
    return new Stretches(
        days.away(), days.guests(), days.guestFactor(), days.guestsAtHome(), days.ordinary());
  }
}

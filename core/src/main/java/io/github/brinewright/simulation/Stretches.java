package io.github.brinewright.simulation;

/**
 * The parts of a year. The stretch of days away and that with guests lie each at a random place;
 * days on which both fall are counted as away.
 *
 * @param away days
 * @param guests days of the stretch with guests
 * @param guestFactor use on these for one of an ordinary day
 * @param both days on which both fall, in the mean
 */
record Stretches(int away, int guests, double guestFactor, double both) {
  static final int YEAR = 365;

  static Stretches of(DemandModel demand) {
    double both = 0;
    for (int day = 0; day < YEAR; day++) {
      both += chance(day, demand.away()) * chance(day, demand.guestDays());
    }
    return new Stretches(demand.away(), demand.guestDays(), demand.guestFactor(), both);
  }

  /** Chance that a day falls within a stretch. */
  private static double chance(int day, int length) {
    int places = YEAR - length + 1;
    int covering = Math.min(Math.min(day + 1, YEAR - day), Math.min(length, places));
    return (double) covering / places;
  }

  /** Days with guests on which somebody is at home, in the mean. */
  double guestsAtHome() {
    return guests - both;
  }

  /** Days neither away nor with guests, in the mean. */
  double ordinary() {
    return YEAR - away - guestsAtHome();
  }
}

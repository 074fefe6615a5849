package io.github.brinewright.demand;

/**
 * More than a household: guests come and go, and the use of many people strays less than that of
 * few. CV² = CV²(occupancy) + CV²(home) ÷ (people ÷ 2.5), with 0.3 for the occupancy; common
 * practice.
 */
final class Lodging {
  private static final double OCCUPANCY = 0.3;
  private static final double PEOPLE_OF_A_HOME = 2.5;

  private Lodging() {}

  /** How the days of so many people stray; a household's own variation up to 8 people. */
  static DailyVariation variation(DailyVariation home, int people) {
    if (people <= DailyUse.LARGEST_HOUSEHOLD || home.steady()) {
      return home;
    }
    double own = home.coefficient() * home.coefficient() / (people / PEOPLE_OF_A_HOME);
    double coefficient = Math.sqrt(OCCUPANCY * OCCUPANCY + own);
    return new DailyVariation(coefficient, home.nextDay(), home.weekdays());
  }
}

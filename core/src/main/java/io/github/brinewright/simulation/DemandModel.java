package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;

/**
 * The use of a home day by day. The usual variation of the days is a default:
 *
 * <pre>{@code
 * DemandModel steady = DemandModel.of(home).withVariation(DailyVariation.NONE);
 * }</pre>
 *
 * @param mean of a day on which the household is at home; above 0, up to 10^6 gal
 * @param variation of the days
 * @param away days of the year away, in one stretch; 0 to 300
 * @param guestDays days of the year with guests, in one stretch; 0 to 300
 * @param guestFactor use on these days for one of an ordinary day; 1 to 5
 */
public record DemandModel(
    Volume mean, DailyVariation variation, int away, int guestDays, double guestFactor) {
  private static final double HIGHEST_GUEST_FACTOR = 5;
  private static final double LARGEST_GALLONS = 1e6;

  /** Share of the ordinary use that goes on while everybody is away. */
  static final double LEFT_WHILE_AWAY = 0.02;

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public DemandModel {
    Require.positive("mean use", mean);
    Require.between("mean use of a day in gal", mean.gallons(), 0, LARGEST_GALLONS);
    Require.between("days away", away, 0, 300);
    Require.between("days with guests", guestDays, 0, 300);
    Require.between("guest factor", guestFactor, 1, HIGHEST_GUEST_FACTOR);
  }

  /**
   * What passes the softener of a home: expected use with the usual variation, the days away and
   * the guests as stated.
   */
  public static DemandModel of(HomeLoad home) {
    Household household = home.site().household();
    double factor = 1 + (double) household.guests() / household.people();
    return new DemandModel(
        home.softenedExpected(),
        home.variation(),
        household.awayDays(),
        household.guestDays(),
        Math.min(HIGHEST_GUEST_FACTOR, factor));
  }

  /** The same home with days that stray in another way. */
  public DemandModel withVariation(DailyVariation other) {
    return new DemandModel(mean, other, away, guestDays, guestFactor);
  }

  /** The usual variation, nobody away, no guests. */
  public static DemandModel of(Volume mean) {
    return new DemandModel(mean, DailyVariation.USUAL, 0, 0, 1);
  }

  /** The same use each day. */
  public static DemandModel constant(Volume mean) {
    return of(mean).withVariation(DailyVariation.NONE);
  }
}

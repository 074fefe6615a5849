package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.YearDays;
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
 * @param days of the year away and with guests
 */
public record DemandModel(Volume mean, DailyVariation variation, YearDays days) {
  private static final double LARGEST_GALLONS = 1e6;

  /**
   * @param mean of a day on which the household is at home
   * @param variation of the days
   * @param days of the year away and with guests
   * @throws IllegalArgumentException outside the ranges above
   */
  public DemandModel {
    Require.positive("mean use", mean);
    Require.between("mean use of a day in gal", mean.gallons(), 0, LARGEST_GALLONS);
  }

  /**
   * {@return what passes the softener of a home: its mean use, its variation and its days}
   *
   * @param home what the home asks for
   */
  public static DemandModel of(HomeLoad home) {
    return new DemandModel(home.softenedExpected(), home.variation(), home.use().days());
  }

  /**
   * {@return the same home with days that stray in another way}
   *
   * @param other how its days stray about the mean
   */
  public DemandModel withVariation(DailyVariation other) {
    return new DemandModel(mean, other, days);
  }

  /**
   * {@return a home whose use varies as usual, with nobody away and no guests}
   *
   * @param mean of a day; above 0, up to 10^6 gal
   */
  public static DemandModel of(Volume mean) {
    return new DemandModel(mean, DailyVariation.USUAL, YearDays.ALWAYS_AT_HOME);
  }

  /**
   * {@return a home that uses the same each day}
   *
   * @param mean of a day; above 0, up to 10^6 gal
   */
  public static DemandModel constant(Volume mean) {
    return of(mean).withVariation(DailyVariation.NONE);
  }
}

package io.github.brinewright.comparison;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.sizing.Design;

/**
 * Hard water of one bed in a mean year and beyond it.
 *
 * @param mean at the mean use as stated
 * @param meanShare of a year's use; dimensionless
 * @param highShare of a year's use at the mean that three of four such homes stay below
 * @param runOutShare share of intervals that run out, over all such homes
 */
record HardWaterYear(HardWater mean, double meanShare, double highShare, double runOutShare) {
  private static final double THREE_OF_FOUR = 0.75;

  static HardWaterYear of(Design design) {
    HomeLoad home = design.home();
    double high = home.use().likely().highMean(THREE_OF_FOUR);
    Volume year = home.softenedYear();
    HardWater mean = design.hardWater().orElseThrow();
    return new HardWaterYear(
        mean,
        mean.total().ratioTo(year),
        design.hardWaterHigh().orElseThrow().total().ratioTo(year.times(high)),
        design.runOutShare().orElseThrow());
  }
}

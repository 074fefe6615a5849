package io.github.brinewright.sizing;

import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.HardWaterForecast;

/** The year of one bed, forecast at the mean use, at a high one, and over all that it may be. */
final class ForecastYear {
  private static final double THREE_OF_FOUR = 0.75;

  private final BedSettings bed;
  private final HardWater mean;
  private final Once<HardWater> high;
  private final Once<Double> runOutShare;

  ForecastYear(HardWaterForecast forecast, BedSettings bed, LikelyUse likely) {
    this.bed = bed;
    mean = forecast.year(bed);
    high = new Once<>(() -> forecast.yearAt(bed, likely.highMean(THREE_OF_FOUR)));
    runOutShare = new Once<>(() -> forecast.runOutShare(bed, likely.uncertain()));
  }

  BedSettings bed() {
    return bed;
  }

  HardWater mean() {
    return mean;
  }

  HardWater high() {
    return high.get();
  }

  double runOutShare() {
    return runOutShare.get();
  }
}

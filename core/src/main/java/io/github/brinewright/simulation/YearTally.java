package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Volume;

/**
 * Sums of a mean year of one bed.
 *
 * @param regenerations begun
 * @param runOuts regenerations that came after the bed had run out
 * @param runOutDays on which the bed had run out
 * @param runOut volume that passed hard for that reason, in mean days or gallons
 * @param cycle volume that passed hard during regenerations, in the same unit
 */
record YearTally(
    double regenerations, double runOuts, double runOutDays, double runOut, double cycle) {
  static final YearTally NONE = new YearTally(0, 0, 0, 0, 0);

  /** So many intervals that are alike. */
  static YearTally of(double intervals, Interval each) {
    double ends = intervals * each.runOutChance();
    return new YearTally(
        intervals,
        ends,
        intervals * each.runOutDays(),
        intervals * each.runOut(),
        intervals * each.cycle());
  }

  YearTally plus(YearTally other) {
    return new YearTally(
        regenerations + other.regenerations,
        runOuts + other.runOuts,
        runOutDays + other.runOutDays,
        runOut + other.runOut,
        cycle + other.cycle);
  }

  YearTally times(double factor) {
    return new YearTally(
            factor * regenerations, factor * runOuts, factor * runOutDays, runOut, cycle)
        .volumesTimes(factor);
  }

  YearTally volumesTimes(double factor) {
    return new YearTally(regenerations, runOuts, runOutDays, factor * runOut, factor * cycle);
  }

  HardWater inGallons() {
    return new HardWater(
        regenerations,
        Volume.ofGallons(runOut),
        Volume.ofGallons(cycle),
        runOutDays,
        regenerations == 0 ? 0 : runOuts / regenerations);
  }
}

package io.github.brinewright.simulation;

/**
 * What a metered bed holds and is set to, in mean days.
 *
 * @param capacity of the bed
 * @param set volume after which it regenerates
 * @param hardShare share of a day's use that passes during a regeneration
 */
record MeterSetting(double capacity, double set, double hardShare) {
  boolean beyondBed() {
    return set > capacity;
  }
}

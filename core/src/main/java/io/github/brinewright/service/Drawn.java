package io.github.brinewright.service;

/**
 * What one way comes to a year in each draw of what is not known.
 *
 * @param saltPounds salt
 * @param waterGallons regeneration water
 * @param hardGallons hard water from all causes
 * @param runOutDays days out of soft water
 * @param costs in units of the currency
 */
record Drawn(
    double[] saltPounds,
    double[] waterGallons,
    double[] hardGallons,
    double[] runOutDays,
    double[] costs) {

  static Drawn ofSize(int draws) {
    return new Drawn(
        new double[draws],
        new double[draws],
        new double[draws],
        new double[draws],
        new double[draws]);
  }

  /** What is saved in each draw against another way. */
  double[] savedAgainst(Drawn other) {
    double[] saved = new double[costs.length];
    for (int k = 0; k < saved.length; k++) {
      saved[k] = other.costs[k] - costs[k];
    }
    return saved;
  }
}

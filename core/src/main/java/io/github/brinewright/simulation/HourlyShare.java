package io.github.brinewright.simulation;

import io.github.brinewright.softener.Control;

/**
 * When in the day water is used. Source: DAIAD open meter data, 56 households (CC BY-SA 4.0): share
 * of each hour, from midnight.
 */
final class HourlyShare {
  private static final double[] SHARES = {
    0.0224, 0.0115, 0.0064, 0.0046, 0.0041, 0.0060, 0.0238, 0.0660, 0.0546, 0.0559, 0.0629, 0.0621,
    0.0560, 0.0487, 0.0464, 0.0449, 0.0411, 0.0420, 0.0479, 0.0613, 0.0773, 0.0677, 0.0502, 0.0364
  };

  private HourlyShare() {}

  /**
   * Share of a day's use within some hours from the start of an hour, which a regeneration meets.
   */
  static double from(int hour, double hours) {
    double sum = 0;
    double left = hours;
    for (int h = hour; left > 0; h++) {
      sum += SHARES[h % 24] * Math.min(1, left);
      left--;
    }
    return sum;
  }

  /** Share of a day's use that meets a regeneration of a bed. */
  static double during(BedSettings bed) {
    return bed.control() == Control.METERED_AT_ONCE
        ? duringUse(bed.cycleHours())
        : from(bed.hour(), bed.cycleHours());
  }

  /** Mean share of a day's use that meets a regeneration begun while water is drawn. */
  private static double duringUse(double hours) {
    double sum = 0;
    for (int hour = 0; hour < 24; hour++) {
      sum += SHARES[hour] * from(hour + 1, hours);
    }
    return sum;
  }
}

package io.github.brinewright.demand;

import java.util.List;
import java.util.SplittableRandom;

/**
 * A home that lives through some days and the year after them. It shares nothing with the rule that
 * is tried on it: days are lognormal and resemble those before them, each weekday has its factor in
 * each home, a season swings with a phase of its own, the level drifts, and people go away.
 */
final class LivedHome {
  /** How people go away. */
  enum Away {
    /** Never, and they say so. */
    NEVER,
    /** Now and then for 2 to 14 days, as many a year in the mean as they say. */
    JOURNEYS,
    /** Once a year, for as many days as they say. */
    ONE_STRETCH,
    /** Now and then, and nobody has said so. */
    UNSTATED
  }

  private static final int YEAR = 365;
  private static final double NEXT_DAY = 0.13;
  private static final double SEASON = 0.10;
  private static final double DRIFT_OF_A_YEAR = 0.05;
  private static final double OWN_WEEK = 0.05;
  private static final double LEFT_WHILE_AWAY = 0.02;
  private static final int[] DAYS_AWAY = {0, 7, 14, 28, 42};

  /** Published for 56 homes: lag 1 and weekdays, and quantiles of their variation. */
  private static final double[] WEEK = {0.986, 0.976, 0.970, 0.972, 0.967, 1.047, 1.084};

  private static final double[] SHARES = {0.10, 0.25, 0.50, 0.75, 0.90};
  private static final double[] VARIATIONS = {0.324, 0.380, 0.461, 0.530, 0.698};

  private final SplittableRandom random;
  private final int days;
  private final double[] level;
  private final boolean[] away;
  private int statedAway;

  /** Use of each day that is read. */
  final double[] used;

  /** Mean use of a day at home over the coming year: its level, not the chance of single days. */
  final double truth;

  LivedHome(SplittableRandom random, double mean, int days, double variation, Away kind) {
    this.random = random;
    this.days = days;
    level = levels(mean);
    away = new boolean[days + YEAR];
    goAway(kind);
    truth = comingYear(kind == Away.UNSTATED);
    used = lived(variation);
  }

  int statedAway() {
    return statedAway;
  }

  /** The mean of a home, lognormal about that of all. */
  static double meanOf(SplittableRandom random, double ofAll, double coefficient) {
    double s = Math.sqrt(Math.log1p(coefficient * coefficient));
    return ofAll * Math.exp(s * random.nextGaussian() - s * s / 2);
  }

  /** A variation between the published tenth and ninetieth percent, 0.32 to 0.70. */
  static double variationOf(SplittableRandom random) {
    double share = random.nextDouble(0.1, 0.9);
    int i = 1;
    while (SHARES[i] < share) {
      i++;
    }
    double part = (share - SHARES[i - 1]) / (SHARES[i] - SHARES[i - 1]);
    return VARIATIONS[i - 1] + part * (VARIATIONS[i] - VARIATIONS[i - 1]);
  }

  private double[] levels(double mean) {
    double sine = SEASON * random.nextGaussian();
    double cosine = SEASON * random.nextGaussian();
    double drift = 0;
    double[] all = new double[days + YEAR];
    for (int day = 0; day < all.length; day++) {
      double angle = 2 * Math.PI * day / YEAR;
      drift += DRIFT_OF_A_YEAR / Math.sqrt(YEAR) * random.nextGaussian();
      all[day] = mean * Math.exp(drift + sine * Math.sin(angle) + cosine * Math.cos(angle));
    }
    return all;
  }

  private void goAway(Away kind) {
    int ofYear = kind == Away.NEVER ? 0 : DAYS_AWAY[random.nextInt(DAYS_AWAY.length)];
    statedAway = kind == Away.UNSTATED ? 0 : ofYear;
    if (ofYear == 0) {
      return;
    }
    if (kind == Away.ONE_STRETCH) {
      for (int first = random.nextInt(YEAR) - YEAR; first < away.length; first += YEAR) {
        leave(first, ofYear);
      }
      return;
    }
    double between = 8.0 * (YEAR - ofYear) / ofYear;
    double first = pause(between) - random.nextInt(14);
    while (first < away.length) {
      int length = random.nextInt(2, 15);
      leave((int) first, length);
      first += length + pause(between);
    }
  }

  private double pause(double mean) {
    return -mean * Math.log(1 - random.nextDouble());
  }

  private void leave(int first, int length) {
    for (int day = Math.max(0, first); day < Math.min(away.length, first + length); day++) {
      away[day] = true;
    }
  }

  /** Days away count as days at home where nobody has said that people go away. */
  private double comingYear(boolean awayCounts) {
    double sum = 0;
    int counted = 0;
    for (int day = days; day < level.length; day++) {
      if (awayCounts || !away[day]) {
        sum += level[day] * (away[day] ? LEFT_WHILE_AWAY : 1);
        counted++;
      }
    }
    return sum / counted;
  }

  private double[] lived(double variation) {
    double s = Math.sqrt(Math.log1p(variation * variation));
    double[] week = new double[7];
    for (int i = 0; i < 7; i++) {
      week[i] = WEEK[i] * Math.exp(OWN_WEEK * random.nextGaussian());
    }
    double[] all = new double[days];
    double alike = random.nextGaussian();
    for (int day = 0; day < days; day++) {
      all[day] = level[day] * week[day % 7] * Math.exp(s * alike - s * s / 2);
      all[day] *= away[day] ? LEFT_WHILE_AWAY : 1;
      alike = NEXT_DAY * alike + Math.sqrt(1 - NEXT_DAY * NEXT_DAY) * random.nextGaussian();
    }
    return all;
  }

  /** How people go away, one home after another. */
  static Away kindOf(int home) {
    List<Away> kinds = List.of(Away.values());
    return kinds.get(home % kinds.size());
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.UseTotal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How the water drawn since a regeneration grows night by night, for any set volume: the renewal
 * function of the days, cut off at the longest interval. All volumes are multiples of the mean day.
 *
 * <p>With S(n) the use of n days and N the longest interval, an interval that ends on the night
 * after the set volume s lasts Σ P(S(n) &lt; s) days, n = 0 … N−1. A bed that holds c runs out in
 * it with the chance Σ P(S(n) &lt; s, S(n+1) &gt; c), and Σ E[(S(n+1) − c)⁺; S(n) &lt; s] passes
 * hard. The days' correlation enters the variance of S(n), the mean of the day that follows when
 * S(n) is known, and the days after one on which the set volume was reached: that is a heavy day.
 * Source: renewal theory (Cox, 1962); the three corrections are an own computation, of first order.
 */
final class ReachingTable {
  private static final double CELLS_PER_DAY = 16;
  private static final double WIDEST = 9;
  private static final int SHORT = 3;
  private static final int MOST_MADE = 100;
  private static final Map<Key, ReachingTable> MADE = new ConcurrentHashMap<>();

  private final int longest;
  private final double carriedOn;
  private final double carriedToNext;
  private final double[][] below;
  private final double[] nights;
  private final double[] pull;
  private final double[] carried;
  private final LastDay last;

  private record Key(DailyVariation variation, int longest) {}

  /** The table of a variation; made once. */
  static ReachingTable of(DailyVariation variation, int longest) {
    if (MADE.size() > MOST_MADE) {
      MADE.clear();
    }
    return MADE.computeIfAbsent(
        new Key(variation, longest), key -> new ReachingTable(new DayMoments(variation), longest));
  }

  private ReachingTable(DayMoments moments, int longest) {
    this.longest = longest;
    carriedOn = moments.carriedOn();
    carriedToNext = moments.carried(1);
    last = new LastDay(moments, CELLS_PER_DAY, cells(moments.days(1)));
    int cells = cells(moments.days(longest));
    below = new double[longest][cells + 1];
    nights = new double[cells + 1];
    pull = new double[cells];
    carried = new double[cells];
    Arrays.fill(below[0], 1);
    for (int days = 1; days < longest; days++) {
      UseTotal total = moments.days(days);
      fill(below[days], total, days > SHORT ? List.of(total) : moments.daysFromEachWeekday(days));
      add(below[days], total.mean(), moments.carriedBy(days), moments.carried(days + 1));
    }
  }

  private static int cells(UseTotal total) {
    return (int) Math.ceil((total.mean() + WIDEST * Math.sqrt(total.variance())) * CELLS_PER_DAY);
  }

  private static void fill(double[] below, UseTotal total, List<UseTotal> alike) {
    int certain = cells(total);
    for (int i = 1; i < below.length; i++) {
      double use = i / CELLS_PER_DAY;
      below[i] = i > certain ? 1 : 1 - LastDay.mean(alike, each -> each.beyond(use));
    }
  }

  private void add(double[] chances, double mean, double carriedBySum, double carriedByFirst) {
    for (int i = 0; i < nights.length; i++) {
      nights[i] += chances[i];
    }
    for (int i = 0; i < pull.length; i++) {
      double chance = chances[i + 1] - chances[i];
      pull[i] += chance * carriedBySum * ((i + 0.5) / CELLS_PER_DAY - mean);
      carried[i] += chance * carriedByFirst;
    }
  }

  /** Days of the longest interval. */
  int longest() {
    return longest;
  }

  /** How much the days after a heavy one use more, together, for each unit that it is heavier. */
  double carriedOn() {
    return carriedOn;
  }

  /** The same for the next day alone. */
  double carriedToNext() {
    return carriedToNext;
  }

  /** Chance that some days, less than the longest interval, stay below a volume. */
  double below(int days, double volume) {
    return LastDay.at(below[days], volume * CELLS_PER_DAY);
  }

  /** Mean days of an interval that ends on the night after a volume. */
  double days(double set) {
    return 1 + LastDay.at(nights, set * CELLS_PER_DAY);
  }

  /**
   * By how much the day on which a set volume is reached is above the mean day, times the chance
   * that it is reached.
   */
  double heavy(double set) {
    double sum = last.heavy(set);
    int end = cellsWithin(set);
    for (int i = firstCell(set); i < end; i++) {
      sum += (nights[i + 1] - nights[i]) * last.heavy(set - middle(i));
    }
    return sum;
  }

  private int cellsWithin(double set) {
    return Math.max(0, Math.min(pull.length, (int) (set * CELLS_PER_DAY)));
  }

  private int firstCell(double volume) {
    return Math.max(0, (int) ((volume - last.longest()) * CELLS_PER_DAY));
  }

  private static double middle(int cell) {
    return (cell + 0.5) / CELLS_PER_DAY;
  }

  /**
   * What runs over in one interval.
   *
   * @param set volume whose night ends the interval
   * @param capacity of the bed; not below {@code set}
   * @param heavy by how much the day before the interval was above the mean
   */
  Overflow overflow(double set, double capacity, double heavy) {
    LastDay.Sum sum = last.sum();
    sum.add(1, heavy * carriedToNext, capacity + heavy * carriedOn);
    int end = cellsWithin(set);
    for (int i = firstCell(capacity); i < end; i++) {
      add(sum, i, 1, capacity - middle(i), heavy);
    }
    double part = set * CELLS_PER_DAY - end;
    if (end < pull.length && part > 0) {
      add(sum, end, part, capacity - (end + part / 2) / CELLS_PER_DAY, heavy);
    }
    return sum.overflow();
  }

  private void add(LastDay.Sum sum, int cell, double part, double left, double heavy) {
    double chance = nights[cell + 1] - nights[cell];
    sum.add(part * chance, part * (pull[cell] + heavy * carried[cell]), left);
  }
}

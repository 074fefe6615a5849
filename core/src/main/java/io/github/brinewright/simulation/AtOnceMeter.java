package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;

/**
 * A meter that regenerates within the day. An interval takes its set volume from the bed, less what
 * the longest interval leaves unused, and a part of the day on which it ends passes hard besides.
 * That day is a heavy one: E[X²] ÷ E[X] in the mean. It leaves the half of itself to the next
 * interval, less what passed hard. Source: renewal theory (Cox, 1962), length-biased sampling.
 */
final class AtOnceMeter implements Meter {
  private static final double NEVER = 1e-6;
  private static final double SHORTEST = 1.0 / 24;

  private final ReachingTable reaching;
  private final ReachingTable afterWholeDay;
  private final double set;
  private final double hardShare;
  private final UseTotal day;
  private final double heavy;
  private final double begun;
  private final double more;
  private final UseTotal afterReaching;
  private final UseTotal afterLongest;

  /**
   * @param reaching table up to the longest interval
   * @param afterWholeDay table up to a day more
   * @param set volume after which it regenerates
   * @param hardShare share of a day's use that passes during a regeneration
   */
  AtOnceMeter(
      DayMoments moments,
      ReachingTable reaching,
      ReachingTable afterWholeDay,
      double set,
      double hardShare) {
    this.reaching = reaching;
    this.afterWholeDay = afterWholeDay;
    this.set = set;
    this.hardShare = hardShare;
    day = moments.days(1);
    heavy = day.variance() / day.mean();
    begun = (day.mean() + heavy) * (0.5 - lost());
    more = heavy * reaching.carriedOn();
    UseTotal days = moments.days(longest());
    afterReaching =
        new UseTotal(days.mean() + begun + more, days.variance() + begunVariance() + more);
    afterLongest = moments.days(longest() + 1);
  }

  /** A regeneration late in the day ends after it. */
  private double lost() {
    return hardShare - hardShare * hardShare / 2;
  }

  /** E[X³] ÷ 3 E[X] − (E[X²] ÷ 2 E[X])² of a gamma day. */
  private double begunVariance() {
    double ratio = heavy / day.mean();
    double square = day.mean() * day.mean();
    return square * (1 + ratio) * ((1 + 2 * ratio) / 3 - (1 + ratio) / 4);
  }

  @Override
  public Interval interval(double factor) {
    double volume = set / factor;
    Ending reached = ending(afterReaching, begun, longest(), volume);
    Ending longest = ending(afterLongest, 0, longest() + 1, volume);
    double unreached = reached.chance() / (1 + reached.chance() - longest.chance());
    double ends = (1 - unreached) * day.mean() + heavyShare(volume, unreached);
    double last = (1 - unreached) * reached.lastDay() + unreached * longest.lastDay();
    double unused = (1 - unreached) * reached.unused() + unreached * longest.unused();
    double taken = volume - unused - last + lost() * ends;
    double days = Math.min(longest(), Math.max(SHORTEST, taken / day.mean()));
    return new Interval(days, 0, 0, factor * hardShare * (ends + last));
  }

  private double heavyShare(double volume, double unreached) {
    return unreached < NEVER
        ? heavy
        : (1 - unreached) * reaching.heavy(volume - begun - more)
            + unreached * afterWholeDay.heavy(volume);
  }

  /**
   * How an interval ends when its volume is not reached.
   *
   * @param chance that it is not
   * @param unused volume at the end of the last day, times that chance
   * @param lastDay use of that day, times that chance
   */
  private record Ending(double chance, double unused, double lastDay) {}

  private static Ending ending(UseTotal total, double begun, int days, double volume) {
    double chance = 1 - total.beyond(volume);
    double unused = volume - total.mean() + total.excess(volume);
    return new Ending(chance, unused, ((volume - begun) * chance - unused) / days);
  }

  @Override
  public int longest() {
    return reaching.longest();
  }

  @Override
  public double waiting(int days) {
    return reaching.below(days, Math.max(0, set - begun));
  }
}

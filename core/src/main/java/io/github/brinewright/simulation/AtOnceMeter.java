package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;

/**
 * A meter that regenerates within the day. An interval takes its set volume from the bed, less what
 * the longest interval leaves unused, and a part of the day on which it ends passes hard besides.
 * That day is a heavy one: E[X²] ÷ E[X] in the mean. It leaves the half of itself to the next
 * interval, less what passed hard. Set to more than the bed holds it lets the difference pass hard,
 * which begins and ends within a day. Source: renewal theory (Cox, 1962), length-biased sampling.
 */
final class AtOnceMeter implements Meter {
  private static final double NEVER = 1e-6;
  private static final double SHORTEST = 1.0 / 24;

  private final ReachingTable reaching;
  private final ReachingTable afterWholeDay;
  private final DayMoments moments;
  private final MeterSetting setting;
  private final UseTotal day;
  private final double heavy;
  private final double begun;
  private final double more;
  private final UseTotal afterReaching;
  private final UseTotal afterLongest;

  /**
   * @param reaching table up to the longest interval
   * @param afterWholeDay table up to a day more
   * @param setting of the meter
   */
  AtOnceMeter(
      DayMoments moments,
      ReachingTable reaching,
      ReachingTable afterWholeDay,
      MeterSetting setting) {
    this.reaching = reaching;
    this.afterWholeDay = afterWholeDay;
    this.moments = moments;
    this.setting = setting;
    day = moments.days(1);
    heavy = day.variance() / day.mean();
    begun = (day.mean() + heavy) * (0.5 - lost());
    more = heavy * reaching.carriedOn();
    afterReaching = begunAnd(longest());
    afterLongest = moments.days(longest() + 1);
  }

  /** The rest of a day within which a regeneration fell, and so many days after it. */
  private UseTotal begunAnd(int days) {
    UseTotal whole = moments.days(days);
    return new UseTotal(whole.mean() + begun + more, whole.variance() + begunVariance() + more);
  }

  /** A regeneration late in the day ends after it. */
  private double lost() {
    return setting.hardShare() - setting.hardShare() * setting.hardShare() / 2;
  }

  /** E[X³] ÷ 3 E[X] − (E[X²] ÷ 2 E[X])² of a gamma day. */
  private double begunVariance() {
    double ratio = heavy / day.mean();
    double square = day.mean() * day.mean();
    return square * (1 + ratio) * ((1 + 2 * ratio) / 3 - (1 + ratio) / 4);
  }

  @Override
  public Interval interval(double factor) {
    double volume = setting.set() / factor;
    Ending reached = ending(afterReaching, begun, longest(), volume);
    Ending longest = ending(afterLongest, 0, longest() + 1, volume);
    double unreached = reached.chance() / (1 + reached.chance() - longest.chance());
    double ends = (1 - unreached) * day.mean() + heavyShare(volume, unreached);
    double last = (1 - unreached) * reached.lastDay() + unreached * longest.lastDay();
    double unused = (1 - unreached) * reached.unused() + unreached * longest.unused();
    double taken = volume - unused - last + lost() * ends;
    double days = Math.min(longest(), Math.max(SHORTEST, taken / day.mean()));
    double cycle = factor * setting.hardShare() * (ends + last);
    if (!setting.beyondBed()) {
      return new Interval(days, 0, 0, 0, cycle);
    }
    HardStretch hard = new HardStretch(day, setting.capacity() / factor, volume);
    Overflow over =
        Overflow.mixed(
            unreached,
            hard.within(moments.days(longest()), afterLongest, longest.untaken()),
            hard.within(begunAnd(longest() - 1), afterReaching, reached.untaken()));
    double reach = 1 - (1 - unreached) * reached.chance() - unreached * longest.chance();
    double hardDays = Math.min(days, hard.days(over, reach, setting.hardShare()));
    return new Interval(days, over.chance(), hardDays, factor * over.volume(), cycle);
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
  private record Ending(double chance, double unused, double lastDay) {
    double untaken() {
      return unused + lastDay;
    }
  }

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
    return reaching.below(days, Math.max(0, setting.set() - begun));
  }

  @Override
  public double waitingHard(int days) {
    return Math.max(
        0, waiting(days) - reaching.below(days, Math.max(0, setting.capacity() - begun)));
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;

/**
 * What passes hard within one interval of a meter that regenerates at once and is set to more than
 * the bed holds. All volumes are multiples of the mean day. Source: own computation; renewal theory
 * (Cox, 1962).
 *
 * @param day use of one
 * @param held by the bed
 * @param set volume that ends the interval, unless the longest one does
 */
record HardStretch(UseTotal day, double held, double set) {

  /**
   * The chance of it and its mean. Where the set volume is not reached on the last day, the
   * regeneration comes before that day's use; where it is, up to it, but not to what the bed holds.
   *
   * @param before use up to the beginning of the last day that the interval may have
   * @param total use up to its end
   * @param untaken what of the set volume is left when it is not reached, that day left out, times
   *     that chance
   */
  Overflow within(UseTotal before, UseTotal total, double untaken) {
    Overflow earlier = Overflow.between(before, held, set);
    double onLastDay = Math.max(0, total.beyond(set) - before.beyond(set));
    double upToSet = Math.max(0, set - before.mean() + before.excess(set) - untaken);
    return new Overflow(
        Math.max(earlier.chance(), total.beyond(set)),
        earlier.volume() + Math.min(upToSet, (set - held) * onLastDay));
  }

  /**
   * Days on which it passes. A stretch of hard water begins within a day and ends within another:
   * so many days as its water is, and one more. One that the longest interval ends begins within a
   * day and ends with one, so that of the one more half a heavy day is wanting. Days that take all
   * that the bed holds between two stretches are counted once.
   *
   * @param over of an interval
   * @param reached chance that the set volume ends it
   * @param hardShare share of a day's use that passes during a regeneration
   */
  double days(Overflow over, double reached, double hardShare) {
    double heavy = (1 + day.variance() / (day.mean() * day.mean())) / 2;
    double softened = ClockForecast.softened(hardShare, 1);
    double bridged = day.excess(held / softened) * softened / day.mean();
    return over.chance()
        + over.volume() / day.mean()
        - heavy * Math.max(0, over.chance() - reached)
        - bridged;
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.YearDays;

/**
 * A year of a metered bed: each part of it as long as that part is divided by the mean interval,
 * and what the days away shift.
 *
 * <p>While nobody is at home only the longest interval ends an interval. A stretch of A days away
 * that begins at a random moment meets a bed of age a with the chance P(S(a) &lt; s) ÷ mean
 * interval; it adds the regenerations that fall due by age, and leaves a bed whose time to the next
 * regeneration is other than usual. A bed that has run out stays so until it is due by age. Source:
 * renewal theory, stationary age and residual life (Cox, 1962).
 */
final class MeteredYear {
  private final Meter meter;
  private final int longest;
  private final double[] summed;
  private final double interval;

  private MeteredYear(Meter meter) {
    this.meter = meter;
    longest = meter.longest();
    summed = new double[longest + 1];
    for (int age = 0; age < longest; age++) {
      summed[age + 1] = summed[age] + meter.waiting(age);
    }
    interval = summed[longest];
  }

  static YearTally of(Meter meter, Stretches stretches) {
    Interval usual = meter.interval(1);
    YearTally year = YearTally.of(stretches.ordinary() / usual.days(), usual);
    if (stretches.guests() > 0) {
      Interval busy = meter.interval(stretches.guestFactor());
      year = year.plus(YearTally.of(stretches.guestsAtHome() / busy.days(), busy));
    }
    return stretches.away() == 0
        ? year
        : year.plus(new MeteredYear(meter).away(stretches.away(), usual));
  }

  private YearTally away(int days, Interval usual) {
    double dueByAge = 0;
    double usualRest = 0;
    double rest = 0;
    double hard = 0;
    double ends = 0;
    for (int age = 0; age < longest; age++) {
      double chance = (summed[age + 1] - summed[age]) / interval;
      int later = age + days;
      double ranOut = meter.waitingHard(age) / interval;
      hard += ranOut * Math.min(days, longest - age);
      ends += later < longest ? 0 : ranOut;
      usualRest += (age + 1) * chance;
      if (later < longest) {
        rest += (summed[longest - days] - summed[age]) / interval;
      } else {
        dueByAge += chance * (later / longest);
        rest += chance * summed[longest - later % longest];
      }
    }
    double left = YearDays.LEFT_WHILE_AWAY;
    return YearTally.of(dueByAge, new Interval(0, 0, 0, 0, left * usual.cycle()))
        .plus(new YearTally(0, ends, hard, left * hard, 0))
        .plus(YearTally.of((usualRest - rest) / interval, usual));
  }
}

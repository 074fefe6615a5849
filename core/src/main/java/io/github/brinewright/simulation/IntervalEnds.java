package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;
import io.github.brinewright.demand.YearDays;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How often a clock's bed has run out at the end of an interval: little else than {@link
 * ClockForecast}, but cheap enough for many homes. Weekdays are taken alike, and intervals that
 * days away or guests cover in part are told apart by four lengths of that part.
 */
final class IntervalEnds {
  private static final int LENGTHS = 4;

  private final int days;
  private final DayMoments moments;
  private final List<End> ends = new ArrayList<>();

  /** Intervals that are alike: how many a year, and what they use. */
  private record End(double perYear, UseTotal total) {}

  IntervalEnds(int days, DayMoments moments, Stretches stretches) {
    this.days = days;
    this.moments = moments;
    double touched = stretch(stretches.away(), YearDays.LEFT_WHILE_AWAY, 1);
    if (stretches.guests() > 0) {
      double atHome = stretches.guestsAtHome() / stretches.guests();
      touched += stretch(stretches.guests(), stretches.guestFactor(), atHome);
    }
    double perYear = (double) Stretches.YEAR / days;
    ends.add(new End(Math.max(0, perYear - touched), covered(0, 1)));
  }

  /** Adds what a stretch touches and returns how many intervals that are. */
  private double stretch(int length, double factor, double weight) {
    if (length == 0) {
      return 0;
    }
    double each = weight / days;
    int most = Math.min(length, days);
    int all = Math.abs(length - days) + 1;
    ends.add(new End(each * all, covered(most, factor)));
    int parts = Math.min(LENGTHS, most - 1);
    for (int i = 0; i < parts; i++) {
      int part = (int) Math.round(0.5 + (i + 0.5) * (most - 1) / parts);
      ends.add(new End(2 * each * (most - 1) / parts, covered(part, factor)));
    }
    return each * (all + 2 * (most - 1));
  }

  private UseTotal covered(int part, double factor) {
    double[] factors = new double[days];
    Arrays.fill(factors, 1);
    Arrays.fill(factors, 0, part, factor);
    return moments.days(DayMoments.ANY, factors);
  }

  /**
   * The share of intervals at whose end the bed has run out.
   *
   * @param capacity in mean days
   * @param hardShare share of a day's use that passes during a regeneration
   */
  double runOutShare(double capacity, double hardShare) {
    double held = capacity / ClockForecast.softened(hardShare, days);
    double ran = 0;
    double all = 0;
    for (End end : ends) {
      ran += end.perYear() * end.total().beyond(held);
      all += end.perYear();
    }
    return ran / all;
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;
import io.github.brinewright.demand.YearDays;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Any bed under a clock: a bed that holds c runs out in an interval of n days with the chance
 * P(S(n) &gt; c), E[(S(n) − c)⁺] passes hard, and it stays empty on Σ P(S(i) &gt; c) days, i = 1 …
 * n. The first day loses what passes during the regeneration, on average that share of S(i) ÷ i.
 * Days away and guests cover an interval, or the beginning or end of one, as often as a stretch of
 * their length at a random place does. Source: gamma distribution; own computation.
 */
final class ClockForecast {
  private static final int WEEK = 7;
  private static final int SHORT = 3;
  private static final double NEVER = 1e-7;
  private static final double FAR = 9;
  private static final double LARGEST_SHARE = 0.99;

  private final DayMoments moments;
  private final Stretches stretches;
  private final List<Part> parts = new ArrayList<>();

  /**
   * Intervals that are alike.
   *
   * @param perYear how many
   * @param totals use of the first day, the first two days and so on
   */
  private record Part(double perYear, List<UseTotal> totals) {}

  private ClockForecast(DayMoments moments, Stretches stretches) {
    this.moments = moments;
    this.stretches = stretches;
  }

  /** Every so many days; short intervals tell one weekday from another. */
  static ClockForecast every(int days, DayMoments moments, Stretches stretches) {
    ClockForecast clock = new ClockForecast(moments, stretches);
    double perYear = (double) Stretches.YEAR / days;
    if (days > SHORT) {
      clock.add(DayMoments.ANY, days, perYear);
    } else {
      for (int first = 0; first < WEEK; first++) {
        clock.add(first, days, perYear / WEEK);
      }
    }
    return clock;
  }

  /** On chosen weekdays. */
  static ClockForecast on(Set<DayOfWeek> weekdays, DayMoments moments, Stretches stretches) {
    ClockForecast clock = new ClockForecast(moments, stretches);
    for (DayOfWeek day : weekdays) {
      int gap = 1;
      while (!weekdays.contains(day.plus(gap))) {
        gap++;
      }
      clock.add(day.getValue() - 1, gap, (double) Stretches.YEAR / WEEK);
    }
    return clock;
  }

  private void add(int first, int days, double perYear) {
    double perPlace = perYear / Stretches.YEAR;
    double touched = addStretch(first, days, perPlace, stretches.away(), YearDays.LEFT_WHILE_AWAY);
    if (stretches.guests() > 0) {
      double atHome = stretches.guestsAtHome() / stretches.guests();
      double factor = stretches.guestFactor();
      touched += addStretch(first, days, perPlace * atHome, stretches.guests(), factor);
    }
    addPart(Math.max(0, perYear - touched), first, ones(days));
  }

  private double addStretch(int first, int days, double perPlace, int length, double factor) {
    if (length == 0) {
      return 0;
    }
    int places = length + days - 1;
    int whole = Math.max(0, length - days + 1);
    for (int begin = 1 - length; begin < days; begin++) {
      int from = Math.max(0, begin);
      int to = Math.min(days, begin + length);
      if (to - from < days) {
        addPart(perPlace, first, covered(days, from, to, factor));
      }
    }
    if (whole > 0) {
      addPart(perPlace * whole, first, covered(days, 0, days, factor));
    }
    return perPlace * places;
  }

  private static double[] ones(int days) {
    return covered(days, 0, days, 1);
  }

  private static double[] covered(int days, int from, int to, double factor) {
    double[] factors = new double[days];
    Arrays.fill(factors, 1);
    Arrays.fill(factors, from, to, factor);
    return factors;
  }

  private void addPart(double perYear, int first, double[] factors) {
    List<UseTotal> totals = new ArrayList<>();
    for (int days = 1; days <= factors.length; days++) {
      totals.add(moments.days(first, Arrays.copyOf(factors, days)));
    }
    parts.add(new Part(perYear, totals));
  }

  /**
   * The year of a bed.
   *
   * @param capacity in mean days
   * @param hardShare share of a day's use that passes during a regeneration
   */
  YearTally year(double capacity, double hardShare) {
    YearTally year = YearTally.NONE;
    for (Part part : parts) {
      year = year.plus(interval(part.totals(), capacity, hardShare).times(part.perYear()));
    }
    return year;
  }

  private static YearTally interval(List<UseTotal> totals, double capacity, double hardShare) {
    int days = totals.size();
    UseTotal whole = totals.get(days - 1);
    double cycle = hardShare * totals.get(0).mean();
    if (capacity > whole.mean() + FAR * Math.sqrt(whole.variance())) {
      return new YearTally(1, 0, 0, 0, cycle);
    }
    double softened = softened(hardShare, days);
    double over = whole.excess(capacity / softened) * softened;
    double ends = 0;
    double empty = 0;
    double chance = 1;
    for (int i = days; i > 0 && chance > NEVER; i--) {
      chance = totals.get(i - 1).beyond(capacity / softened(hardShare, i));
      ends = i == days ? chance : ends;
      empty += chance;
    }
    return new YearTally(1, ends, empty, over, cycle);
  }

  /** Share of an interval that the bed softens when none is left. */
  static double softened(double hardShare, int days) {
    return Math.max(1 - LARGEST_SHARE, 1 - hardShare / days);
  }
}

package io.github.brinewright.year;

import io.github.brinewright.regeneration.Control;
import java.time.DayOfWeek;

/** Runs one bed through the days of one year. A day begins at 2 a.m., when a night control acts. */
final class BedYear {
  private final boolean immediate;
  private final boolean clock;
  private final double capacity;
  private final double set;
  private final int days;
  private final boolean[] weekdays;
  private final double hardShare;

  private double left;
  private int gap;
  private boolean ranOut;
  private int regenerations;
  private int runOuts;
  private int hardDays;
  private double hard;
  private double duringCycle;
  private double unused;
  private double soft;
  private double restored;
  private int longest;

  BedYear(BedSettings bed) {
    immediate = bed.control() == Control.METERED_IMMEDIATE;
    clock = bed.control() == Control.CLOCK;
    capacity = bed.capacity().gallons();
    set = bed.set().gallons();
    days = bed.days();
    weekdays = bed.weekdays().isEmpty() ? new boolean[0] : chosen(bed);
    hardShare =
        immediate
            ? HourlyShare.duringUse(bed.cycleHours())
            : HourlyShare.duringNight(bed.cycleHours());
  }

  private static boolean[] chosen(BedSettings bed) {
    boolean[] chosen = new boolean[7];
    for (DayOfWeek day : bed.weekdays()) {
      chosen[day.getValue() - 1] = true;
    }
    return chosen;
  }

  /**
   * Runs the days; the first {@code warmUp} of them are not counted.
   *
   * @param gallons use of each day
   * @param firstWeekday 0 for Monday
   */
  Tally run(double[] gallons, int warmUp, int firstWeekday) {
    left = capacity;
    int weekday = firstWeekday;
    for (int day = 0; day < gallons.length; day++) {
      if (day == warmUp) {
        startCounting();
      }
      double use = gallons[day];
      if (!immediate && dueAtNight(weekday)) {
        regenerate(use);
        use -= hardShare * use;
      }
      draw(use);
      gap++;
      weekday = weekday == 6 ? 0 : weekday + 1;
    }
    longest = Math.max(longest, gap);
    return new Tally(
        regenerations,
        runOuts,
        hardDays,
        hard,
        duringCycle,
        unused,
        soft,
        restored - left,
        longest);
  }

  private void startCounting() {
    regenerations = 0;
    runOuts = 0;
    hardDays = 0;
    hard = 0;
    duringCycle = 0;
    unused = 0;
    soft = 0;
    longest = 0;
    restored = left;
  }

  private boolean dueAtNight(int weekday) {
    if (clock) {
      return weekdays.length == 0 ? gap >= days : weekdays[weekday] && gap > 0;
    }
    return gap > 0 && (capacity - left >= set || gap >= days);
  }

  private void regenerate(double useOfTheDay) {
    regenerations++;
    runOuts += ranOut ? 1 : 0;
    ranOut = false;
    longest = Math.max(longest, gap);
    gap = 0;
    unused += left;
    restored += capacity;
    left = capacity;
    duringCycle += hardShare * useOfTheDay;
  }

  private void draw(double use) {
    double toDraw = use;
    if (immediate) {
      double most = 24;
      while (capacity - left + toDraw >= set && most-- > 0) {
        double before = Math.max(0, set - (capacity - left));
        soften(before);
        toDraw -= before;
        regenerate(use);
        toDraw = Math.max(0, toDraw - hardShare * use);
      }
      if (gap >= days) {
        regenerate(use);
      }
    }
    if (toDraw > left) {
      hardDays++;
      hard += toDraw - left;
      ranOut = true;
    }
    soften(Math.min(toDraw, left));
  }

  private void soften(double gallons) {
    soft += gallons;
    left = Math.max(0, left - gallons);
  }
}

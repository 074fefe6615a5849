package io.github.brinewright.simulation;

import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;

/**
 * Runs one bed through the days of one year. A day begins at the hour at which a clock or a meter
 * that waits acts, and ends at that hour of the next.
 *
 * <p>{@code left} is the capacity less all water that has passed since the last regeneration. Below
 * zero the bed has run out and the water passes hard, which only a meter that is set to more than
 * the bed holds goes on counting for.
 */
final class BedRun {
  private static final int MOST_A_DAY = 24;

  private final boolean immediate;
  private final boolean clock;
  private final double capacity;
  private final double set;
  private final double keep;
  private final boolean beyond;
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
  private double leftAtStart;
  private int longest;

  BedRun(BedSettings bed) {
    immediate = bed.control() == Control.METERED_AT_ONCE;
    clock = bed.control().timed();
    capacity = bed.capacity().gallons();
    left = capacity;
    set = bed.set().gallons();
    days = bed.days();
    weekdays = bed.weekdays().isEmpty() ? new boolean[0] : chosen(bed);
    keep = immediate ? capacity - set : 0;
    beyond = set > capacity;
    hardShare = HourlyShare.during(bed);
  }

  private static boolean[] chosen(BedSettings bed) {
    boolean[] chosen = new boolean[7];
    for (DayOfWeek day : bed.weekdays()) {
      chosen[day.getValue() - 1] = true;
    }
    return chosen;
  }

  /**
   * Lets the run begin within an interval, as long since the last regeneration and with as much
   * drawn as the place says.
   *
   * @param place in the interval, from 0 up to but not including 1
   */
  BedRun beginAt(double place) {
    gap = (int) (place * days);
    left = capacity - place * set;
    return this;
  }

  /**
   * The same where the warm-up may be too short to forget how the run begins, so that days and
   * water must belong together.
   *
   * @param place in the interval, from 0 up to but not including 1
   * @param mean use of a day in gallons
   */
  BedRun beginAt(double place, double mean) {
    double interval = clock ? days : Math.min(days, set / mean);
    gap = (int) (place * interval);
    left = capacity - place * interval * mean;
    return this;
  }

  /**
   * Runs the days; the first {@code warmUp} of them are not counted.
   *
   * @param gallons use of each day
   * @param firstWeekday 0 for Monday
   */
  YearCounts run(double[] gallons, int warmUp, int firstWeekday) {
    pass(gallons, 0, warmUp, firstWeekday);
    startCounting();
    pass(gallons, warmUp, gallons.length, (firstWeekday + warmUp) % 7);
    longest = Math.max(longest, gap);
    return new YearCounts(
        regenerations,
        runOuts,
        hardDays,
        hard,
        duringCycle,
        unused,
        soft,
        leftAtStart + regenerations * capacity - softLeft(),
        longest);
  }

  /** Runs the same days one by one and returns the regenerations of each day after the first. */
  int[] regenerations(double[] gallons, int warmUp, int firstWeekday) {
    pass(gallons, 0, warmUp, firstWeekday);
    int[] counts = new int[gallons.length - warmUp];
    for (int day = 0; day < counts.length; day++) {
      int before = regenerations;
      int at = warmUp + day;
      pass(gallons, at, at + 1, (firstWeekday + at) % 7);
      counts[day] = regenerations - before;
    }
    return counts;
  }

  private void pass(double[] gallons, int from, int to, int firstWeekday) {
    if (weekdays.length == 0) {
      passPlainDays(gallons, from, to);
      return;
    }
    for (int day = from; day < to; day++) {
      night(weekdays[(firstWeekday + day - from) % 7] && gap > 0, gallons[day]);
    }
  }

  /** Draws day after day from local variables until something has to happen. */
  private void passPlainDays(double[] gallons, int from, int to) {
    boolean waits = !clock && !immediate;
    boolean oftenWithinDay = immediate && !beyond;
    double spare = Math.max(0, keep);
    double dueBelow = waits ? capacity - set : Double.NEGATIVE_INFINITY;
    double rest = left;
    double softened = 0;
    int since = gap;
    for (int day = from; day < to; day++) {
      double use = gallons[day];
      boolean due = since >= days || (rest <= dueBelow && since > 0);
      double after = use - hardShare * use - (rest - keep);
      if (oftenWithinDay && !due && after > 0 && after < set) {
        // One regeneration within the day, by far the most common event of this control.
        regenerations++;
        longest = Math.max(longest, since);
        unused += keep;
        duringCycle += hardShare * use;
        softened += use - hardShare * use;
        rest = capacity - after;
        since = 1;
      } else if (due || use > rest - spare) {
        left = rest;
        gap = since;
        happen(due, use);
        rest = left;
        since = gap;
      } else {
        rest -= use;
        softened += use;
        since++;
      }
    }
    soft += softened;
    left = rest;
    gap = since;
  }

  private void happen(boolean due, double use) {
    if (immediate) {
      drawAndRegenerate(use);
      gap++;
    } else {
      night(due, use);
    }
  }

  private void night(boolean due, double use) {
    double toDraw = use;
    if (due) {
      regenerate(use);
      toDraw -= hardShare * use;
    }
    hardDays += draw(toDraw) ? 1 : 0;
    gap++;
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
    leftAtStart = softLeft();
  }

  private void regenerate(double useOfTheDay) {
    regenerations++;
    runOuts += ranOut ? 1 : 0;
    ranOut = false;
    longest = Math.max(longest, gap);
    gap = 0;
    unused += softLeft();
    left = capacity;
    duringCycle += hardShare * useOfTheDay;
  }

  /** A control that regenerates at once may do so several times a day. */
  private void drawAndRegenerate(double use) {
    double hardEach = hardShare * use;
    double toDraw = use;
    int most = MOST_A_DAY;
    double before = Math.max(0, left - keep);
    boolean lacking = false;
    while (toDraw >= before && most-- > 0) {
      lacking |= draw(before);
      regenerate(use);
      toDraw = Math.max(0, toDraw - before - hardEach);
      before = left - keep;
    }
    if (gap >= days) {
      regenerate(use);
      toDraw = Math.max(0, toDraw - hardEach);
    }
    lacking |= draw(toDraw);
    hardDays += lacking ? 1 : 0;
  }

  /** Draws water and returns whether some of it passed hard. */
  private boolean draw(double use) {
    double held = softLeft();
    boolean lacking = use > held;
    if (lacking) {
      hard += use - held;
      ranOut = true;
    }
    soft += Math.min(use, held);
    left -= use;
    return lacking;
  }

  private double softLeft() {
    return Math.max(0, left);
  }
}

package io.github.brinewright.regeneration;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Set;

/**
 * A clock that regenerates on chosen weekdays; the longest gap between two of them decides what the
 * bed must hold.
 *
 * @param days at least one
 */
public record WeekdayClock(Set<DayOfWeek> days) {
  private static final int WEEK = 7;

  /**
   * @throws IllegalArgumentException when no day is chosen
   */
  public WeekdayClock {
    if (days.isEmpty()) {
      throw new IllegalArgumentException("a weekday clock needs at least one weekday");
    }
    days = EnumSet.copyOf(days);
  }

  /** The longest run of days from one regeneration to the next. */
  public int longestGap() {
    int longest = 0;
    for (DayOfWeek day : days) {
      int gap = 1;
      while (!days.contains(day.plus(gap))) {
        gap++;
      }
      longest = Math.max(longest, gap);
    }
    return longest;
  }

  /**
   * The fewest weekdays, spread as evenly as a week allows, whose longest gap is not above a number
   * of days. Example: 3 days → Monday, Wednesday, Friday.
   *
   * @param mostDays 1 or more
   */
  public static WeekdayClock forGap(int mostDays) {
    int needed = (WEEK + mostDays - 1) / mostDays;
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (int i = 0; i < needed; i++) {
      days.add(DayOfWeek.MONDAY.plus(i * WEEK / needed));
    }
    return new WeekdayClock(days);
  }
}

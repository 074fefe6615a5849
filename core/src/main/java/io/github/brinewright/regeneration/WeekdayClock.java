package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Require;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * A clock that regenerates on chosen weekdays; the longest gap between two of them decides what the
 * bed must hold.
 *
 * @param days at least one
 */
public record WeekdayClock(Set<DayOfWeek> days) {
  /** Longest gaps that weekdays can be asked for: 1 day to a year. */
  public static final Bounds<Integer> GAP = Bounds.of(1, CalendarYear.DAYS);

  private static final int WEEK = 7;
  private static final int LETTERS = 3;

  /**
   * @param days at least one
   * @throws IllegalArgumentException when no day is chosen
   */
  public WeekdayClock {
    days = Collections.unmodifiableSet(EnumSet.copyOf(Require.someOf("weekdays", days)));
  }

  /** {@return the longest run of days from one regeneration to the next} */
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
   * {@return the short name of a weekday in files and JSON, the same in every language} Three
   * letters: mon, tue, wed, thu, fri, sat, sun.
   *
   * @param day any
   */
  public static String code(DayOfWeek day) {
    return day.name().substring(0, LETTERS).toLowerCase(Locale.ROOT);
  }

  /**
   * {@return the next of the weekdays after a day, not the day itself}
   *
   * @param day any day
   */
  public LocalDate firstAfter(LocalDate day) {
    LocalDate next = day.plusDays(1);
    while (!days.contains(next.getDayOfWeek())) {
      next = next.plusDays(1);
    }
    return next;
  }

  /**
   * {@return the fewest weekdays, spread as evenly as a week allows, whose longest gap is not above
   * a number of days} Example: 3 days → Monday, Wednesday, Friday.
   *
   * @param mostDays 1 to 365
   * @throws IllegalArgumentException outside that range
   */
  public static WeekdayClock forGap(int mostDays) {
    GAP.require("longest gap in days", mostDays);
    int needed = (WEEK + mostDays - 1) / mostDays;
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (int i = 0; i < needed; i++) {
      days.add(DayOfWeek.MONDAY.plus(i * WEEK / needed));
    }
    return new WeekdayClock(days);
  }
}

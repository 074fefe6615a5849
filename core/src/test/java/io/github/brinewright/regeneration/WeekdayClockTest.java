package io.github.brinewright.regeneration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeekdayClockTest {
  /** Every choice of one to seven weekdays: the bits of 1 to 127. */
  private static List<Set<DayOfWeek>> patterns() {
    return IntStream.rangeClosed(1, 127).mapToObj(WeekdayClockTest::pattern).toList();
  }

  private static Set<DayOfWeek> pattern(int bits) {
    return EnumSet.allOf(DayOfWeek.class).stream()
        .filter(day -> (bits >> day.ordinal() & 1) == 1)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(DayOfWeek.class)));
  }

  /**
   * Two weeks written out, a mark for each regeneration: the longest run of other days, and one.
   */
  private static int longestRun(Set<DayOfWeek> days) {
    String week =
        Arrays.stream(DayOfWeek.values())
            .map(day -> days.contains(day) ? "|" : ".")
            .collect(Collectors.joining());
    String fromFirst = week.repeat(3).substring(week.indexOf('|'));
    return 1
        + Arrays.stream(fromFirst.substring(0, 15).split("\\|"))
            .mapToInt(String::length)
            .max()
            .orElse(0);
  }

  @Test
  void theLongestGapOfEachPatternIsItsLongestRunOfDays() {
    assertThat(patterns())
        .hasSize(127)
        .allSatisfy(
            days ->
                assertThat(new WeekdayClock(days).longestGap())
                    .as(days.toString())
                    .isEqualTo(longestRun(days)));
  }

  @Test
  void noPatternOfFewerDaysKeepsTheGap() {
    for (int gap = 1; gap <= 14; gap++) {
      int most = gap;
      int fewest =
          patterns().stream()
              .filter(days -> longestRun(days) <= most)
              .mapToInt(Set::size)
              .min()
              .orElseThrow();
      WeekdayClock clock = WeekdayClock.forGap(gap);

      assertThat(clock.days()).as("at most %d days", gap).hasSize(fewest);
      assertThat(clock.longestGap()).isLessThanOrEqualTo(gap);
    }
  }

  @Test
  void theDaysAreSpreadAsEvenlyAsAWeekAllows() {
    for (int gap = 1; gap <= 7; gap++) {
      Set<DayOfWeek> chosen = WeekdayClock.forGap(gap).days();
      int shortestLongest =
          patterns().stream()
              .filter(days -> days.size() == chosen.size())
              .mapToInt(WeekdayClockTest::longestRun)
              .min()
              .orElseThrow();

      assertThat(longestRun(chosen)).as(chosen.toString()).isEqualTo(shortestLongest);
    }
  }
}

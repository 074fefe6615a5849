package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.time.DayOfWeek;
import java.util.EnumSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A bed under a clock on weekdays, beside the same bed under one of fixed days. */
class WeekdaysDesignTest {
  private static Design design(HomeLoad home, double cubicFeet, Control control) {
    return Homes.only(new Sizer(home), Homes.bed(cubicFeet, 8, control).build());
  }

  private static HomeLoad home(double hardness, int people) {
    return new HomeLoad(Homes.site(hardness, Household.of(people)).build());
  }

  @Property(tries = 200)
  void noGapIsLongerThanTheDaysOfTheSameBedAndItRunsOutNoOftener(
      @ForAll @DoubleRange(min = 4, max = 40) double hardness,
      @ForAll @IntRange(min = 1, max = 8) int people,
      @ForAll @DoubleRange(min = 0.75, max = 4) double cubicFeet) {
    HomeLoad home = home(hardness, people);
    Design week = design(home, cubicFeet, Control.WEEKDAYS);
    Design clock = design(home, cubicFeet, Control.CLOCK);

    assertThat(week.feasible()).isEqualTo(clock.feasible());
    if (!week.feasible()) {
      assertThat(week.schedule().designDays()).isEqualTo(clock.schedule().designDays());
      return;
    }
    WeekdaySchedule schedule = (WeekdaySchedule) week.schedule();
    BedSettings bed = week.bed().orElseThrow();
    int longest = schedule.longestGap();
    assertThat(longest).isLessThanOrEqualTo(clock.schedule().longestDays());
    assertThat(week.schedule().designDays()).isEqualTo(longest);
    assertThat(week.schedule().longestDays()).isEqualTo(longest);
    assertThat(bed.control()).isEqualTo(Control.WEEKDAYS);
    assertThat(bed.weekdays()).isEqualTo(schedule.weekdays());
    assertThat(week.year().orElseThrow().daysBetween()).isLessThanOrEqualTo(longest + 1e-9);
    assertThat(week.runOutShare().orElseThrow())
        .as("half a point of the faster share of a clock of fixed days")
        .isLessThanOrEqualTo(clock.runOutShare().orElseThrow() + 0.006);
    assertThat(week.usable()).isEqualTo(clock.usable());
    assertThat(week.refill().set()).isEqualTo(clock.refill().set());
  }

  @Test
  void aBedThatHoldsBarelyADayRegeneratesEveryDay() {
    Design week = design(home(96, 2), 0.75, Control.WEEKDAYS);
    WeekdaySchedule schedule = (WeekdaySchedule) week.schedule();

    assertThat(schedule.fixedDays().exactDays()).isBetween(1.0, 1.5);
    assertThat(schedule.fixedDays().daysWithinMargin()).as("even a day is too long").isZero();
    assertThat(schedule.weekdays()).isEqualTo(EnumSet.allOf(DayOfWeek.class));
    assertThat(week.year().orElseThrow().regenerations()).isCloseTo(365, within(1e-9));
  }

  @Test
  void aBedOfTwoWeeksRegeneratesOnceAWeek() {
    Design week = design(home(4, 1), 4, Control.WEEKDAYS);

    assertThat(((WeekdaySchedule) week.schedule()).weekdays()).containsExactly(DayOfWeek.MONDAY);
    assertThat(week.schedule().longestDays()).isEqualTo(7);
    assertThat(design(home(4, 1), 4, Control.CLOCK).schedule().longestDays()).isEqualTo(14);
  }

  @Test
  void tanksThatTakeTurnsAreNotSetToWeekdays() {
    Softener twin =
        Homes.bed(1.5, 8, Control.METERED_AT_ONCE)
            .arrangement(Arrangement.TWIN_ALTERNATING, 2)
            .build();

    assertThat(Setup.fits(twin, Control.WEEKDAYS)).isFalse();
    assertThatThrownBy(
            () ->
                Homes.bed(1.5, 8, Control.WEEKDAYS)
                    .arrangement(Arrangement.TWIN_ALTERNATING, 2)
                    .build())
        .hasMessageContaining("tanks that take turns are metered");
  }
}

package io.github.brinewright.regeneration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is set at a control, and when it first regenerates. */
class SetAtAControlTest {
  /** A Thursday. */
  private static final LocalDate START = LocalDate.of(2026, 10, 1);

  private static final Hardness HARDNESS = Hardness.ofGrainsPerGallon(22.4);
  private static final Volume DAY = Volume.ofGallons(225);

  private static ClockSchedule clock(double usableGrains) {
    HardnessAmount load = HARDNESS.in(DAY);
    return new ClockSchedule(
        HardnessAmount.ofGrains(usableGrains), load, load.times(0.6), Collections.nCopies(14, 1.0));
  }

  private static MeteredSchedule meter(Reserve reserve, int longest) {
    return MeteredSchedule.of(Control.METERED_AT_NIGHT, HardnessAmount.ofGrains(25_600))
        .reserve(reserve)
        .longestDays(longest)
        .serving(HARDNESS, DAY);
  }

  @Test
  void aClockIsFirstDueAfterItsDays() {
    assertThat(clock(25_600).setDays()).isEqualTo(5);
    assertThat(clock(25_600).firstDue(START)).isEqualTo(LocalDate.of(2026, 10, 6));
  }

  /** Five days make Monday and Thursday; from a Thursday the next is the Monday. */
  @ParameterizedTest
  @CsvSource({
    "2026-10-01,2026-10-05",
    "2026-10-04,2026-10-05",
    "2026-10-05,2026-10-08",
    "2026-12-31,2027-01-04"
  })
  void weekdaysAreFirstDueOnTheNextOfThemNotOnTheDayItself(LocalDate start, LocalDate due) {
    WeekdaySchedule week = new WeekdaySchedule(clock(25_600));

    assertThat(week.weekdays()).containsExactly(DayOfWeek.MONDAY, DayOfWeek.THURSDAY);
    assertThat(week.firstDue(start)).isEqualTo(due);
  }

  @Test
  void everyDayIsFirstDueTheNextDay() {
    WeekdaySchedule week = new WeekdaySchedule(clock(5_100));

    assertThat(week.weekdays()).isEqualTo(Set.of(DayOfWeek.values()));
    assertThat(week.firstDue(START)).isEqualTo(START.plusDays(1));
  }

  @Test
  void aMeterIsDueAfterItsLongestDaysInAnyCase() {
    assertThat(meter(Reserve.NONE, 7).firstDue(START)).isEqualTo(LocalDate.of(2026, 10, 8));
  }

  /** By hand: (25,600 − 5,040) ÷ 22.4 = 917.9; 25,600 ÷ 22.4 = 1,142.9; 5,040 ÷ 22.4 = 225. */
  @Test
  void theReserveIsDeductedOrSetBesides() {
    MeteredSchedule meter = meter(Reserve.ofDay(DAY, HARDNESS), 14);
    MeterSetting deducted = meter.setting(ReserveForm.DEDUCTED).orElseThrow();
    MeterSetting separate = meter.setting(ReserveForm.SEPARATE).orElseThrow();

    assertThat(deducted.volume().gallons()).isCloseTo(917.857, within(0.001));
    assertThat(deducted.capacity().grains()).isCloseTo(20_560, within(0.01));
    assertThat(deducted.reserve().gallons()).isZero();
    assertThat(separate.volume().gallons()).isCloseTo(1142.857, within(0.001));
    assertThat(separate.capacity().grains()).isCloseTo(25_600, within(0.01));
    assertThat(separate.reserve().gallons()).isCloseTo(225, within(0.001));
  }

  @ParameterizedTest
  @EnumSource
  void bothFormsStartARegenerationAfterTheSameVolume(ReserveForm form) {
    MeteredSchedule meter = meter(Reserve.ofDay(DAY, HARDNESS), 14);
    MeterSetting setting = meter.setting(form).orElseThrow();

    assertThat(setting.starts().gallons())
        .isCloseTo(meter.setVolume().orElseThrow().gallons(), within(1e-6));
    assertThat(setting.capacity().asWaterOf(setting.hardness()).gallons())
        .isCloseTo(setting.volume().gallons(), within(1e-6));
  }

  @Test
  void aBedThatCannotServeTheHomeHasNothingToSet() {
    MeteredSchedule small =
        MeteredSchedule.of(Control.METERED_AT_NIGHT, HardnessAmount.ofGrains(5_000))
            .reserve(Reserve.ofDay(DAY, HARDNESS))
            .serving(HARDNESS, DAY);

    assertThat(small.setting(ReserveForm.DEDUCTED)).isEmpty();
    assertThat(small.setting(ReserveForm.SEPARATE)).isEmpty();
  }
}

package io.github.brinewright.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.home.KnownUse;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The mean use after some months, from what was reckoned with and what was read. */
class UseFromReadingsTest {
  /** A Monday. */
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

  private static final Volume BEFORE = Volume.ofGallons(150);
  private static final double NEXT_YEAR = 0.04;

  private static LikelyUse likely(double coefficient, YearDays days) {
    return new LikelyUse(DailyVariation.USUAL, new UncertainMean(coefficient), days);
  }

  private static LikelyUse typical() {
    return likely(0.457, YearDays.ALWAYS_AT_HOME);
  }

  private static ReadInterval interval(LocalDate first, int days, double gallonsADay) {
    return new ReadInterval(first, days, Volume.ofGallons(gallonsADay * days));
  }

  private static UseFromReadings after(int days, double gallonsADay) {
    return UseFromReadings.of(BEFORE, typical(), List.of(interval(FIRST, days, gallonsADay)));
  }

  /**
   * Sum of the weekday factors of ninety days from a Monday, on which the week repeats 12 times.
   */
  private static double ninetyDays() {
    List<Double> week = DailyVariation.USUAL.weekdays();
    double whole = week.stream().mapToDouble(Double::doubleValue).sum();
    double rest = week.subList(0, 6).stream().mapToDouble(Double::doubleValue).sum();
    return 7 * (12 * whole + rest) / whole;
  }

  @Test
  void theRuleGivesWhatAPocketCalculatorDoes() {
    UseFromReadings use = after(90, 200);

    double days = 1.13 / 0.87 * 1.04 * 1.13 * 0.461 * 0.461 / 90;
    double kept = Math.sin(90 * Math.PI / 365) / (90 * Math.sin(Math.PI / 365));
    double away = 14 * 10 * 0.98 * 0.98 / 365 / 90;
    double information = 1 / (days + 0.01 * kept * kept + away);
    double before = 1 / (0.457 * 0.457);
    double weight = information / (before + 1 + information);
    double read = 18_000 / ninetyDays();

    assertThat(use.mean().gallons()).isCloseTo(150 + weight * (read - 150), within(1e-9));
    assertThat(use.coefficient())
        .isCloseTo(Math.sqrt(1 / (before + information) + 0.0016), within(1e-12));
    assertThat(use.days()).isEqualTo(90);
    assertThat(use.shareOfYear()).isCloseTo(90 / 365.0, within(1e-12));
    assertThat(use.known()).isEqualTo(new KnownUse(use.mean(), use.coefficient()));
  }

  /** Days of shape 1 whose rate is gamma: the posterior summed up over a grid of means. */
  @Test
  void theRuleIsThatOfGammaDaysWhoseRateIsGamma() {
    UseFromReadings use = UseFromReadings.ofYear(BEFORE, typical(), BEFORE.times(365 * 1.4), 0.3);
    double shape = 1 / (0.457 * 0.457) + 2;
    double scale = 150 * (shape - 1);
    double tellings = 1 / 0.09;
    double sum = 0;
    double first = 0;
    double second = 0;
    for (double mean = 1; mean < 3_000; mean += 0.05) {
      double before = -(shape + 1) * Math.log(mean) - scale / mean;
      double told = -tellings * (Math.log(mean) + 210 / mean);
      double weight = Math.exp(before + told + 150);
      sum += weight;
      first += weight * mean;
      second += weight * mean * mean;
    }
    double expected = first / sum;
    double deviation = Math.sqrt(second / sum - expected * expected);

    assertThat(use.mean().gallons()).isCloseTo(expected, within(1e-6 * expected));
    assertThat(use.coefficient())
        .as("with what changes from one year to the next")
        .isCloseTo(Math.hypot(deviation / expected, NEXT_YEAR), within(1e-6));
  }

  @Test
  void readingsThatSayWhatWasThoughtLeaveIt() {
    UseFromReadings use = after(12 * 7, 150);
    assertThat(use.mean().gallons()).isCloseTo(150, within(1e-9));
    assertThat(use.coefficient()).isLessThan(0.2);
  }

  @Test
  void moreDaysNarrowWhatIsKnownAndAYearMostOfAll() {
    double last = 0.457;
    for (int days : List.of(7, 14, 30, 60, 90, 120, 180, 240, 300, 365)) {
      UseFromReadings use = after(days, 150);
      assertThat(use.coefficient()).as("%d days", days).isLessThan(last);
      last = use.coefficient();
    }
    assertThat(last)
        .as("less than a bill leaves open, and never below the change of years")
        .isBetween(NEXT_YEAR, 0.07);
    assertThat(after(90, 150).coefficient()).isBetween(0.10, 0.15);
  }

  @Test
  void aBillIsNeverMadeLessSureByReadings() {
    LikelyUse billed = likely(0.10, YearDays.ALWAYS_AT_HOME);
    UseFromReadings use = UseFromReadings.of(BEFORE, billed, List.of(interval(FIRST, 7, 300)));
    assertThat(use.coefficient()).isEqualTo(0.10);
    assertThat(use.mean().gallons()).isBetween(150.0, 175.0);
  }

  @Test
  void theIntervalHoldsNineOfTenOfALognormalMean() {
    UseFromReadings use = after(90, 200);
    UncertainMean known = new UncertainMean(use.coefficient());
    assertThat(use.low()).isEqualTo(use.mean().times(known.quantile(0.05)));
    assertThat(use.high()).isEqualTo(use.mean().times(known.quantile(0.95)));
    assertThat(use.high().ratioTo(use.low()))
        .as("3.29 deviations of the logarithm")
        .isCloseTo(
            Math.exp(3.2897 * Math.sqrt(Math.log1p(Math.pow(use.coefficient(), 2)))), within(1e-3));
  }

  @Test
  void daysAwayAndGuestsAreCountedIntoTheDaysThatWereRead() {
    YearDays days = new YearDays(73, 36, 2);
    double ofYear = 150 * 365 * days.meanOfYear();
    LikelyUse likely = likely(0.457, days);
    UseFromReadings use =
        UseFromReadings.of(
            BEFORE,
            likely,
            List.of(new ReadInterval(FIRST, 364, Volume.ofGallons(ofYear * 364 / 365))));
    assertThat(use.mean().gallons()).isCloseTo(150, within(1e-9));
    assertThat(use.coefficient())
        .as("where people come and go a year of readings tells less")
        .isGreaterThan(after(364, 150).coefficient());
  }

  @Test
  void weekendsWeighMoreThanOtherDays() {
    UseFromReadings week = after(7, 150);
    UseFromReadings withWeekends =
        UseFromReadings.of(BEFORE, typical(), List.of(interval(LocalDate.of(2026, 1, 10), 9, 150)));
    assertThat(week.mean().gallons()).isCloseTo(150, within(1e-9));
    assertThat(withWeekends.mean().gallons())
        .as("two weekends of nine days use 150 a day where an ordinary day uses less")
        .isLessThan(150);
  }

  @Test
  void whatWasReadMoreThanAYearBeforeIsLeftOut() {
    List<ReadInterval> months =
        IntStream.range(0, 24)
            .mapToObj(i -> interval(FIRST.plusDays(28L * i), 28, i < 10 ? 400 : 150))
            .toList();
    UseFromReadings use = UseFromReadings.of(BEFORE, typical(), months);
    assertThat(use.days()).isEqualTo(14 * 28);
    assertThat(use.shareOfYear()).isEqualTo(1);
    assertThat(use.mean().gallons()).isCloseTo(150, within(1e-9));
  }

  @Test
  void theOrderOfReadingsAndWhereTheyAreCutIsNoMatter() {
    ReadInterval whole = interval(FIRST, 84, 180);
    List<ReadInterval> cut = new ArrayList<>();
    cut.add(interval(FIRST.plusDays(28), 56, 180));
    cut.add(interval(FIRST, 28, 180));
    UseFromReadings once = UseFromReadings.of(BEFORE, typical(), List.of(whole));
    UseFromReadings twice = UseFromReadings.of(BEFORE, typical(), cut);
    assertThat(twice.mean().gallons()).isCloseTo(once.mean().gallons(), within(1e-9));
    assertThat(twice.coefficient()).isCloseTo(once.coefficient(), within(1e-12));
  }

  @Test
  void aSummerThatIsReadTwiceTellsLessOfTheSeasonThanSummerAndWinter() {
    List<ReadInterval> summers =
        List.of(
            interval(LocalDate.of(2025, 6, 1), 90, 150),
            interval(LocalDate.of(2026, 6, 1), 90, 150));
    List<ReadInterval> both =
        List.of(
            interval(LocalDate.of(2025, 6, 1), 90, 150),
            interval(LocalDate.of(2025, 12, 1), 90, 150));
    double ofSummers = UseFromReadings.of(BEFORE, typical(), summers).coefficient();
    double ofBoth = UseFromReadings.of(BEFORE, typical(), both).coefficient();
    assertThat(ofBoth).isLessThan(0.8 * ofSummers);
  }

  @Test
  void daysThatAreCountedTwiceAreRefused() {
    List<ReadInterval> twice =
        List.of(interval(FIRST, 30, 150), interval(FIRST.plusDays(29), 30, 150));
    assertThatThrownBy(() -> UseFromReadings.of(BEFORE, typical(), twice))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2026-02-03")
        .hasMessageContaining("count each day once");
  }

  @Property(tries = 300)
  void whatIsKnownLiesBetweenWhatWasThoughtAndWhatWasRead(
      @ForAll @DoubleRange(min = 30, max = 2_000) double before,
      @ForAll @DoubleRange(min = 0, max = 4_000) double read,
      @ForAll @IntRange(min = 1, max = 120) int weeks,
      @ForAll @DoubleRange(min = 0.01, max = 1) double coefficient,
      @ForAll @IntRange(min = 0, max = 300) int away) {
    LikelyUse likely = likely(coefficient, new YearDays(away, 0, 1));
    UseFromReadings use =
        UseFromReadings.of(
            Volume.ofGallons(before), likely, List.of(interval(FIRST, 7 * weeks, read)));
    double atHome = read / likely.days().meanOfYear();
    assertThat(use.mean().gallons())
        .isBetween(Math.min(before, atHome) - 1e-6, Math.max(before, atHome) + 1e-6);
    assertThat(use.coefficient()).isBetween(0.0, coefficient);
    assertThat(use.low()).isLessThanOrEqualTo(use.mean());
    assertThat(use.high()).isGreaterThanOrEqualTo(use.mean());
  }
}

package io.github.brinewright.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Quantiles over days and homes, against figures computed with scipy and closed forms. */
class LikelyUseTest {
  private static final DailyVariation USUAL = DailyVariation.USUAL;
  private static final double SHARE = 0.9;

  /** Half of the last decimal that is printed. */
  private static final double ROUNDED = 0.0051;

  private static LikelyUse of(double coefficient, YearDays days) {
    return new LikelyUse(USUAL, new UncertainMean(coefficient), days);
  }

  private static final LikelyUse BILLED =
      new LikelyUse(USUAL, UncertainMean.WITH_BILL, YearDays.ALWAYS_AT_HOME);
  private static final LikelyUse UNKNOWN =
      new LikelyUse(USUAL, UncertainMean.WITHOUT_BILL, YearDays.ALWAYS_AT_HOME);

  @Test
  void theFactorOfSomeDaysIsTheQuantileOfTheirGammaSumOverAllHomes() {
    Map<Integer, Double> withBill = Map.of(1, 1.633, 3, 1.408, 7, 1.290, 14, 1.226);
    Map<Integer, Double> without = Map.of(1, 1.848, 3, 1.706, 7, 1.645, 14, 1.618);

    withBill.forEach(
        (days, factor) ->
            assertThat(BILLED.factor(days, SHARE))
                .as("scipy, %d days", days)
                .isCloseTo(factor, within(ROUNDED)));
    without.forEach(
        (days, factor) ->
            assertThat(UNKNOWN.factor(days, SHARE))
                .as("scipy, %d days", days)
                .isCloseTo(factor, within(ROUNDED)));
    assertThat(of(0, YearDays.ALWAYS_AT_HOME).factor(1, SHARE))
        .as("a mean that is known")
        .isCloseTo(USUAL.quantile(SHARE), within(ROUNDED));
  }

  @Test
  void theReserveForARiskIsThatOfAllHomesTogether() {
    assertThat(BILLED.reserveForRisk(0.05)).as("scipy").isCloseTo(1.508, within(0.001));
    assertThat(UNKNOWN.reserveForRisk(0.05)).as("scipy").isCloseTo(2.059, within(0.001));
    assertThat(of(0, YearDays.ALWAYS_AT_HOME).reserveForRisk(0.05))
        .as("a mean that is known")
        .isCloseTo(USUAL.reserveForRisk(0.05), within(1e-6));
  }

  @Test
  void threeOfFourHomesStayBelowTheHighMean() {
    assertThat(UNKNOWN.highMean(0.75)).as("lognormal").isCloseTo(1.220, within(0.0005));
    assertThat(BILLED.highMean(0.75)).as("lognormal").isCloseTo(1.0643, within(0.00005));
  }

  @Test
  void guestsRaiseWhatMustBeHeldAndDaysAwayDoNotLowerIt() {
    LikelyUse guests = of(0.1, new YearDays(0, 100, 2));
    LikelyUse away = of(0.1, new YearDays(100, 0, 1));
    LikelyUse always = of(0.1, new YearDays(0, 300, 2));

    assertThat(guests.factor(1, SHARE)).isGreaterThan(BILLED.factor(1, SHARE) + 0.2);
    assertThat(guests.coverage(1.6)).isLessThan(BILLED.coverage(1.6) - 0.05);
    assertThat(guests.reserveForRisk(0.05)).isGreaterThan(BILLED.reserveForRisk(0.05) + 0.2);
    assertThat(away.factor(1, SHARE)).isEqualTo(BILLED.factor(1, SHARE));
    assertThat(away.coverage(1.6)).isEqualTo(BILLED.coverage(1.6));
    assertThat(always.coverage(3))
        .as("mixture: 300 of 365 days with twice the use")
        .isCloseTo(
            1 - 300 / 365.0 * USUAL.exceedance(1.5) - 65 / 365.0 * USUAL.exceedance(3),
            within(1e-12));
  }

  @Test
  void stretchesThatMeetAreCountedOnceAsAway() {
    assertThat(new YearDays(0, 300, 2).both()).isZero();
    assertThat(new YearDays(300, 300, 2).both())
        .as("two stretches of 300 days share at least 235")
        .isBetween(235.0, 300.0);
    YearDays both = new YearDays(30, 40, 2);
    assertThat(both.ordinary() + both.guestsAtHome() + both.away()).isCloseTo(365, within(1e-9));
  }
}

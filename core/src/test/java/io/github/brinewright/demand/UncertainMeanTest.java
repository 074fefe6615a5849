package io.github.brinewright.demand;

import static io.github.brinewright.demand.DailyVariation.USUAL;
import static io.github.brinewright.demand.UncertainMean.WITHOUT_BILL;
import static io.github.brinewright.demand.UncertainMean.WITH_BILL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Own numbers were computed once more with another program: scipy, 120 Gauss-Hermite nodes. */
class UncertainMeanTest {
  private static final double SHARE = 0.9;

  @Test
  void theDrawsHaveTheWantedMeanAndVariation() {
    for (UncertainMean uncertain : List.of(WITH_BILL, WITHOUT_BILL, new UncertainMean(1))) {
      double mean = uncertain.mean(m -> m);
      double square = uncertain.mean(m -> m * m);

      assertThat(uncertain.mean(m -> 1)).isCloseTo(1, within(1e-5));
      assertThat(mean).isCloseTo(1, within(1e-4));
      assertThat(Math.sqrt(square - 1))
          .as("the outermost homes, 7 in a million, are left out")
          .isCloseTo(uncertain.coefficient(), within(0.003));
    }
    assertThat(new UncertainMean(0).draws()).containsExactly(new UncertainMean.Draw(1, 1));
  }

  @Test
  void threeOfFourHomesStayBelowTheQuarterAbove() {
    assertThat(WITHOUT_BILL.quantile(0.75)).as("lognormal").isCloseTo(1.220, within(0.0005));
    assertThat(WITH_BILL.quantile(0.75)).as("lognormal").isCloseTo(1.0643, within(0.00005));
  }

  @Test
  void theFactorOfSomeDaysIsTheQuantileOfTheirGammaSumOverAllHomes() {
    Map<Integer, Double> withBill = Map.of(1, 1.633, 3, 1.408, 7, 1.290, 14, 1.226);
    Map<Integer, Double> without = Map.of(1, 1.848, 3, 1.706, 7, 1.645, 14, 1.618);

    withBill.forEach(
        (days, factor) ->
            assertThat(WITH_BILL.factor(USUAL, days, SHARE))
                .as("scipy, %d days", days)
                .isCloseTo(factor, within(0.001)));
    without.forEach(
        (days, factor) ->
            assertThat(WITHOUT_BILL.factor(USUAL, days, SHARE))
                .as("scipy, %d days", days)
                .isCloseTo(factor, within(0.001)));
    assertThat(new UncertainMean(0).factor(USUAL, 1, SHARE))
        .as("a mean that is known")
        .isCloseTo(USUAL.quantile(SHARE), within(1e-6));
  }

  @Test
  void theLongestIntervalIsTheOneWhoseFactorTheBedHolds() {
    for (int days : new int[] {1, 3, 7, 14}) {
      double needed = days * WITH_BILL.factor(USUAL, days, SHARE);

      assertThat(WITH_BILL.longestInterval(USUAL, needed + 0.001, SHARE, 14)).isEqualTo(days);
      assertThat(WITH_BILL.longestInterval(USUAL, needed - 0.001, SHARE, 14)).isEqualTo(days - 1);
    }
    assertThat(WITH_BILL.longestInterval(USUAL, 6, SHARE, 14)).isEqualTo(4);
    assertThat(WITH_BILL.longestInterval(USUAL, 1, SHARE, 14)).isZero();
    assertThat(WITH_BILL.longestInterval(USUAL, 100, SHARE, 14)).isEqualTo(14);
  }

  @Test
  void theReserveForARiskIsThatOfAllHomesTogether() {
    assertThat(WITH_BILL.reserveForRisk(USUAL, 0.05)).as("scipy").isCloseTo(1.508, within(0.001));
    assertThat(WITHOUT_BILL.reserveForRisk(USUAL, 0.05))
        .as("scipy")
        .isCloseTo(2.059, within(0.001));
    assertThat(new UncertainMean(0).reserveForRisk(USUAL, 0.05))
        .as("a mean that is known")
        .isCloseTo(USUAL.reserveForRisk(0.05), within(1e-6));
  }

  @Test
  void thePerHeadAllowanceCoversMostDaysOfAllButSmallHouseholds() {
    Map<Integer, Double> covered = Map.of(1, 0.476, 2, 0.793, 3, 0.894, 4, 0.934, 7, 0.972);
    covered.forEach(
        (people, share) -> {
          double mean = 0.78 * (37.2 * people + 69.2);
          assertThat(1 - USUAL.exceedance(75 * people / mean))
              .as("gamma, scipy at 0.46; 75 gal a head; %d people", people)
              .isCloseTo(share, within(0.001));
        });
  }

  @Test
  void impossibleSpreadsAreRefused() {
    assertThatThrownBy(() -> new UncertainMean(1.1)).hasMessageContaining("from 0.0 to 1.0");
    assertThatThrownBy(() -> WITH_BILL.reserveForRisk(USUAL, 0.9)).hasMessageContaining("risk");
    assertThatThrownBy(() -> WITH_BILL.factor(USUAL, 0, SHARE)).hasMessageContaining("days");
    assertThatThrownBy(() -> WITH_BILL.longestInterval(USUAL, 6, 1, 14))
        .hasMessageContaining("share of cases");
    assertThatThrownBy(() -> WITH_BILL.quantile(1)).hasMessageContaining("share of homes");
  }
}

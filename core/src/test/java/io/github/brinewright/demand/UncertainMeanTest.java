package io.github.brinewright.demand;

import static io.github.brinewright.demand.UncertainMean.WITHOUT_BILL;
import static io.github.brinewright.demand.UncertainMean.WITH_BILL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
  void impossibleSpreadsAreRefused() {
    assertThatThrownBy(() -> new UncertainMean(1.1)).hasMessageContaining("from 0.0 to 1.0");
    assertThatThrownBy(() -> WITH_BILL.quantile(1)).hasMessageContaining("share of homes");
  }
}

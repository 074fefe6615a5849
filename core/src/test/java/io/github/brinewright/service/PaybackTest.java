package io.github.brinewright.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Price ÷ what is saved a year, with its range over the draws. */
class PaybackTest {
  /** Savings of 1, 2, … 100 a year in the draws. */
  private static final double[] HUNDRED = IntStream.rangeClosed(1, 100).asDoubleStream().toArray();

  @Test
  void aPriceComesBackInItsShareOfWhatIsSaved() {
    Payback payback = Payback.of(300, 50, HUNDRED);

    assertThat(payback.years()).hasValue(6);
    assertThat(payback.low().orElseThrow()).isBetween(300 / 97.0, 300 / 94.0);
    assertThat(payback.high().orElseThrow()).isBetween(300 / 7.0, 300 / 4.0);
  }

  @Test
  void whereOneInTenSavesNothingTheHighEndIsNever() {
    double[] some = IntStream.range(0, 100).mapToDouble(k -> k < 10 ? -5 : 50).toArray();
    Payback payback = Payback.of(300, 40, some);

    assertThat(payback.never()).isFalse();
    assertThat(payback.low()).hasValue(6);
    assertThat(payback.high()).isEmpty();
  }

  @Test
  void whatSavesNothingNeverComesBackThoughItMayInTheBestOfDraws() {
    double[] some = IntStream.range(0, 100).mapToDouble(k -> k < 20 ? 60 : -5).toArray();
    Payback payback = Payback.of(300, -1, some);

    assertThat(payback.never()).isTrue();
    assertThat(payback.low()).hasValue(5);
    assertThat(payback.within(1e9)).isFalse();
  }

  @Test
  void theStatedFigureLiesWithinItsRange() {
    Payback payback = Payback.of(300, 1_000, HUNDRED);

    assertThat(payback.years()).hasValue(0.3);
    assertThat(payback.low()).hasValue(0.3);
  }

  @Test
  void whatCostsNothingHasComeBackAtOnceOrNever() {
    assertThat(Payback.of(0, 10, HUNDRED).years()).hasValue(0);
    assertThat(Payback.of(0, 0, new double[] {0}).never()).isTrue();
  }
}

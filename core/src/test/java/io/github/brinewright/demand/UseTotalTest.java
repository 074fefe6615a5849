package io.github.brinewright.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class UseTotalTest {
  private static final double STEP = 1e-3;

  @Test
  void chancesAreThoseOfTheGammaDistribution() {
    UseTotal day = UseTotal.of(1, 0.457143);

    assertThat(day.beyond(1.851)).as("closed form, to 3 decimals").isCloseTo(0.05, within(1e-4));
    assertThat(day.quantile(0.95)).isCloseTo(1.851, within(5e-4));
    assertThat(UseTotal.of(100, 0.457143).beyond(185.1)).isCloseTo(day.beyond(1.851), within(1e-9));
  }

  @Property(tries = 40)
  void theExcessIsTheAreaBelowTheTail(
      @ForAll @DoubleRange(min = 0.5, max = 9) double mean,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double coefficient,
      @ForAll @DoubleRange(min = 0, max = 2) double multiple) {
    UseTotal total = UseTotal.of(mean, coefficient);
    double use = mean * multiple;
    double area = 0;
    double tail = 0;
    for (double x = use + STEP / 2; x < mean * 15; x += STEP) {
      area += STEP * total.beyond(x);
      tail += STEP * total.density(x);
    }

    assertThat(total.excess(use)).as("middle sums of step %s", STEP).isCloseTo(area, within(1e-5));
    assertThat(total.beyond(use)).as("the same of the density").isCloseTo(tail, within(1e-4));
  }

  @Test
  void constantUseNeverStrays() {
    UseTotal total = new UseTotal(5, 0);

    assertThat(total.beyond(4.9)).isEqualTo(1);
    assertThat(total.beyond(5)).isZero();
    assertThat(total.excess(4.5)).isEqualTo(0.5);
    assertThat(total.excess(6)).isZero();
    assertThat(total.quantile(0.9)).isEqualTo(5);
    assertThat(total.excess(-1)).isEqualTo(6);
  }
}

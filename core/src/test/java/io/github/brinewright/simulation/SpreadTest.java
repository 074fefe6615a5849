package io.github.brinewright.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadTest {
  @ParameterizedTest
  @CsvSource({"910, 910, 912, true", "584, 584, 600, false", "0, 0, 0, false", "50, 0, 100, false"})
  void aSpreadIsNarrowWhereItsEndsAreWithinTwoPercentOfTheMean(
      double mean, double low, double high, boolean narrow) {
    assertThat(new Spread(mean, low, high).isNarrow()).isEqualTo(narrow);
  }
}

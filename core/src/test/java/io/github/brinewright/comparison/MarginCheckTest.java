package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.trace.Figure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarginCheckTest {
  /** A miss of a tenth, both rounded to two figures, is near; the sense is that of the margin. */
  @ParameterizedTest
  @CsvSource({
    "INTERVAL_MEAN, 3.2, 3, KEPT, 0",
    "INTERVAL_MEAN, 2.95, 3, KEPT, 0",
    "INTERVAL_MEAN, 2.94, 3, NEAR, 0.0333",
    "INTERVAL_MEAN, 2.66, 3, NEAR, 0.1",
    "INTERVAL_MEAN, 2.64, 3, BROKEN, 0.1333",
    "INTERVAL_MEAN, 0, 3, BROKEN, 1",
    "AREA_LOADING_SERVICE, 15.4, 15, KEPT, 0",
    "AREA_LOADING_SERVICE, 16.4, 15, NEAR, 0.0667",
    "AREA_LOADING_SERVICE, 16.6, 15, BROKEN, 0.1333",
    "HARD_WATER_MEAN, 0.01049, 0.01, KEPT, 0",
    "HARD_WATER_MEAN, 0.0114, 0.01, NEAR, 0.1",
    "HARD_WATER_MEAN, 0.0116, 0.01, BROKEN, 0.2",
    "PRESSURE_LEFT, 27, 30, NEAR, 0.1",
    "PRESSURE_LEFT, 26.4, 30, BROKEN, 0.1333"
  })
  void aTenthAtTwoFiguresIsNear(
      Margin margin, double value, double limit, Grade grade, double excess) {
    MarginCheck check = MarginCheck.of(margin, value, limit, Figure::of);

    assertThat(check.grade()).isEqualTo(grade);
    assertThat(check.excess()).isCloseTo(excess, within(5e-5));
    assertThat(check.broken()).isEqualTo(grade == Grade.BROKEN);
    assertThat(check.keptByAnotherMethod().grade())
        .isEqualTo(grade == Grade.BROKEN ? Grade.NEAR : grade);
  }
}

package io.github.brinewright.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import java.util.Arrays;
import java.util.Map;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** The drawn days against the open meter data they stand for, and against closed forms. */
class DailyDrawTest {
  private static final int DAYS = 400_000;
  private static final DailyVariation PLAIN =
      new DailyVariation(0.457143, 0, DailyVariation.NONE.weekdays());

  private static double[] days(DailyVariation variation) {
    double[] days = new double[DAYS];
    DailyDraw.of(variation).fill(days, 11, 0);
    return days;
  }

  private static double coefficient(double[] values) {
    DescriptiveStatistics statistics = new DescriptiveStatistics(values);
    return statistics.getStandardDeviation() / statistics.getMean();
  }

  @Test
  void meanVariationAndCorrelationAreTheWantedOnes() {
    double[] days = days(DailyVariation.USUAL);
    double mean = Arrays.stream(days).average().orElseThrow();
    double correlation =
        new PearsonsCorrelation()
            .correlation(Arrays.copyOfRange(days, 0, DAYS - 1), Arrays.copyOfRange(days, 1, DAYS));

    assertThat(mean)
        .as("four standard errors")
        .isCloseTo(1, within(4 * 0.461 / Math.sqrt(DAYS) * 1.2));
    assertThat(coefficient(days)).as("DAIAD: 0.461, to 0.01").isCloseTo(0.461, within(0.01));
    assertThat(correlation).as("DAIAD: 0.13, to 0.02").isCloseTo(0.13, within(0.02));
  }

  @Test
  void neighbouringSeedsGiveDaysOfTheirOwn() {
    int length = 20_000;
    double[] one = new double[length];
    double[] other = new double[length];
    DailyDraw.of(PLAIN).fill(one, 7, 0);
    for (long seed = 8; seed < 12; seed++) {
      DailyDraw.of(PLAIN).fill(other, seed, 0);
      for (int shift = 0; shift < 3; shift++) {
        double[] late = Arrays.copyOfRange(one, shift, length);
        double[] early = Arrays.copyOf(other, length - shift);
        assertThat(new PearsonsCorrelation().correlation(late, early))
            .as("seed %d, shifted by %d days; four standard errors", seed, shift)
            .isCloseTo(0, within(4 / Math.sqrt(length)));
      }
    }
  }

  @Test
  void totalsOfSeveralDaysVaryAsInTheMeterData() {
    double[] days = days(DailyVariation.USUAL);
    Map<Integer, Double> published = Map.of(2, 0.345, 3, 0.281, 5, 0.233, 7, 0.184);
    published.forEach(
        (length, expected) -> {
          double[] totals = new double[DAYS / length];
          for (int i = 0; i < totals.length * length; i++) {
            totals[i / length] += days[i];
          }
          assertThat(coefficient(totals))
              .as("DAIAD, 61 households, %d days; 0.01 of the source and 0.01 of the model", length)
              .isCloseTo(expected, within(0.02));
        });
  }

  @Test
  void quantilesOfTheDrawAreThoseOfTheGammaDistribution() {
    double[] days = days(PLAIN);
    Arrays.sort(days);
    Map<Double, Double> closedForm = Map.of(0.90, 1.612, 0.95, 1.851, 0.99, 2.356);
    closedForm.forEach(
        (share, expected) -> {
          assertThat(PLAIN.quantile(share))
              .as("gamma, CV 0.457143, closed form to 3 decimals")
              .isCloseTo(expected, within(0.002));
          assertThat(days[(int) (share * DAYS)])
              .as("drawn; sampling error of the quantile")
              .isCloseTo(expected, within(0.015));
        });
  }

  @Test
  void daysAboveAMultipleAreAsManyAsInTheMeterData() {
    Map<Double, Double> published =
        Map.of(1.0, 0.445, 1.25, 0.244, 1.5, 0.124, 1.75, 0.061, 2.0, 0.033, 2.5, 0.011);
    published.forEach(
        (multiple, expected) ->
            assertThat(DailyVariation.USUAL.exceedance(multiple))
                .as("DAIAD, pooled days above %s; the gamma shape misses by up to 0.02", multiple)
                .isCloseTo(expected, within(0.02)));
  }

  @Test
  void theExcessIsThatOfRenewalTheory() {
    double step = 1e-3;
    double integral = 0;
    for (double m = step / 2; m < 12; m += step) {
      integral += step * PLAIN.excessBeyond(m);
    }
    assertThat(PLAIN.excessBeyond(0)).isCloseTo(1, within(1e-9));
    assertThat(integral).as("mean excess (1 + CV^2)/2").isCloseTo(PLAIN.meanExcess(), within(1e-5));
    assertThat(DailyVariation.NONE.excessBeyond(0.25)).isEqualTo(0.75);
  }

  @Test
  void constantUseIsConstant() {
    assertThat(days(DailyVariation.NONE)).containsOnly(1.0);
  }
}

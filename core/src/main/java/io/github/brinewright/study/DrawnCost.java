package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.softener.Control;

/**
 * Cost of one candidate over the years in each draw. Regenerations follow the home's use: they are
 * forecast at a few multiples of it and taken in proportion between them, on logarithmic scales. A
 * delayed meter waits (1 + CV²) ÷ 2 of a day besides. Water is priced as in the year stated,
 * whatever step of the rate a draw would fall in.
 */
final class DrawnCost {
  private static final double[] MULTIPLES = {0.2, 0.35, 0.5, 0.7, 1, 1.4, 2, 3, 5};
  private static final int STATED = 4;

  private final Candidate candidate;
  private final Draws draws;
  private final double[] logRegenerations = new double[MULTIPLES.length];
  private final double stated;
  private final double variation;

  private DrawnCost(Candidate candidate, Draws draws) {
    this.candidate = candidate;
    this.draws = draws;
    variation = candidate.design().home().variation().coefficient();
    BedSettings bed = candidate.design().bed().orElseThrow();
    boolean clock = bed.control().timed();
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(candidate.design().home()));
    for (int i = 0; i < MULTIPLES.length; i++) {
      logRegenerations[i] =
          clock ? 0 : Math.log(forecast.yearAt(bed, MULTIPLES[i]).regenerations());
    }
    stated = Math.exp(logRegenerations[STATED]);
  }

  static DrawnCost of(Candidate candidate, Draws draws) {
    return new DrawnCost(candidate, draws);
  }

  /** What each draw comes to, in units of the currency. */
  double[] costs() {
    double salt = life(CostKind.SALT);
    double water = life(CostKind.WATER) + life(CostKind.SEWER);
    double rest = candidate.life().total().getAmount().doubleValue() - salt - water;
    double[] costs = new double[draws.count()];
    for (int k = 0; k < costs.length; k++) {
      costs[k] =
          rest
              + oftener(draws.use(k), draws.variation(k))
                  * (salt * draws.salt(k) + water * draws.water(k));
    }
    return costs;
  }

  private double life(CostKind kind) {
    return candidate.life().of(kind).getAmount().doubleValue();
  }

  /**
   * Regenerations for one of the year stated.
   *
   * @param multiple of the mean use
   * @param cv coefficient of variation of the days
   */
  double oftener(double multiple, double cv) {
    double often = Math.exp(logRegenerations(Math.log(multiple)));
    if (candidate.setup().control() != Control.METERED_AT_NIGHT) {
      return often / stated;
    }
    double longer = (cv * cv - variation * variation) / 2;
    double days = Math.max(1, CalendarYear.DAYS / often + longer);
    return CalendarYear.DAYS / days / stated;
  }

  private double logRegenerations(double logUse) {
    int i = 1;
    while (i < MULTIPLES.length - 1 && logUse > Math.log(MULTIPLES[i])) {
      i++;
    }
    double low = Math.log(MULTIPLES[i - 1]);
    double share = (logUse - low) / (Math.log(MULTIPLES[i]) - low);
    double clamped = Math.min(1, Math.max(0, share));
    return logRegenerations[i - 1] + clamped * (logRegenerations[i] - logRegenerations[i - 1]);
  }
}

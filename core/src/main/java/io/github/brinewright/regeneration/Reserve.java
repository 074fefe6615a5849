package io.github.brinewright.regeneration;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;

/**
 * Capacity held back so that soft water lasts until the regeneration.
 *
 * @param held zero or more
 * @param days of daily load that it holds
 * @param risk of running out that it was chosen for; 0 where it was not chosen by risk
 */
public record Reserve(HardnessAmount held, double days, double risk) {
  /** Nothing held back: for immediate regeneration. */
  public static final Reserve NONE = new Reserve(HardnessAmount.ofGrains(0), 0, 0);

  /**
   * @throws IllegalArgumentException when negative
   */
  public Reserve {
    Require.notNegative("reserve", held);
  }

  /** One day's design load: the usual reserve of a delayed regeneration. */
  public static Reserve ofDay(HardnessAmount dailyLoad) {
    return new Reserve(dailyLoad, 1, 0);
  }

  /**
   * What is not enough in a chosen share of regenerations at expected use.
   *
   * @param risk 0.0001 to 0.5
   * @param expectedLoad of a day
   */
  public static Reserve forRisk(double risk, HardnessAmount expectedLoad) {
    double days = DailyVariation.USUAL.reserveForRisk(risk);
    return new Reserve(expectedLoad.times(days), days, risk);
  }

  /** Whether it was chosen by risk. */
  public boolean byRisk() {
    return risk > 0;
  }
}

package io.github.brinewright.study;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.trace.Rough;
import org.joda.money.Money;

/**
 * What a meter saves against a clock on the same bed, and what drives it. Made by a {@link
 * HomeStudy}.
 *
 * @param clockCost salt, water and sewer of a mean year under the clock
 * @param meterCost the same under the meter
 * @param setFor use of a day that the clock is set for
 * @param used use of a mean day
 * @param byClock hard water of a mean year under the clock
 * @param byMeter the same under the meter
 */
public record MeterSaving(
    Money clockCost,
    Money meterCost,
    Volume setFor,
    Volume used,
    HardWater byClock,
    HardWater byMeter) {

  /** {@return what the meter saves in a mean year; negative when it costs more} */
  public Money saved() {
    return clockCost.minus(meterCost);
  }

  /** {@return whether both costs are printed alike, so that neither may be called the lower one} */
  public boolean isLevel() {
    return Rough.alike(clockCost, meterCost);
  }
}

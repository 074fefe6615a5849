package io.github.brinewright.study;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import org.joda.money.Money;

/**
 * What a meter saves against a clock on the same bed, and what drives it. Made by a {@link
 * HomeStudy}.
 *
 * @param saved salt, water and sewer of a mean year; negative when the meter costs more
 * @param setFor use of a day that the clock is set for
 * @param used use of a mean day
 * @param byClock hard water of a mean year under the clock
 * @param byMeter the same under the meter
 */
public record MeterSaving(
    Money saved, Volume setFor, Volume used, HardWater byClock, HardWater byMeter) {}

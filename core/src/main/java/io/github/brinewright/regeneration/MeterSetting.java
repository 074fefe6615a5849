package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;

/**
 * What is set at a meter: a volume, or for controls that reckon it themselves a hardness and a
 * capacity; and a reserve where the control holds one back besides. Volume = capacity ÷ hardness.
 * Source: quotient of the figures named.
 *
 * @param volume between two regenerations, before the reserve; more than zero
 * @param capacity between two regenerations, before the reserve; more than zero
 * @param hardness compensated; more than zero
 * @param reserve that the control holds back besides; zero or more, below {@code volume}
 */
public record MeterSetting(
    Volume volume, HardnessAmount capacity, Hardness hardness, Volume reserve) {
  /**
   * @param volume between two regenerations, before the reserve
   * @param capacity between two regenerations, before the reserve
   * @param hardness compensated
   * @param reserve that the control holds back besides
   * @throws IllegalArgumentException outside the ranges above
   */
  public MeterSetting {
    Require.positive("volume of the meter", volume);
    Require.positive("capacity of the meter", capacity);
    Require.positive("hardness of the meter", hardness);
    Require.notNegative("reserve of the meter", reserve);
    if (reserve.compareTo(volume) >= 0) {
      throw new IllegalArgumentException(
          "a reserve of " + reserve + " leaves nothing of the " + volume + " of the meter");
    }
  }

  static MeterSetting of(HardnessAmount capacity, Hardness hardness, Volume reserve) {
    return new MeterSetting(capacity.asWaterOf(hardness), capacity, hardness, reserve);
  }

  /** {@return the volume after which a regeneration is due: {@code volume} less {@code reserve}} */
  public Volume starts() {
    return volume.minus(reserve);
  }
}

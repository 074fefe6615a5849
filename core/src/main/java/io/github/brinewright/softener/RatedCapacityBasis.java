package io.github.brinewright.softener;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * Usable capacity = 0.8 × rated; salt = 3 lb for each 10,000 usable grains. Example: 32,000 rated →
 * 25,600 usable, 7.68 lb. Source: common practice.
 *
 * @param rated the rating; more than zero
 * @param resin volume of the bed; more than zero
 * @param regenerant the salt used
 */
public record RatedCapacityBasis(HardnessAmount rated, Volume resin, Regenerant regenerant)
    implements CapacityBasis {
  private static final double USABLE_SHARE = 0.8;
  private static final double POUNDS = 3;
  private static final double FOR_GRAINS = 10_000;
  private static final double RATED_GRAINS_PER_CUBIC_FOOT = 32_000;

  /**
   * @throws IllegalArgumentException when the rating or the volume is not more than zero
   */
  public RatedCapacityBasis {
    Require.positive("rated capacity", rated);
    Require.positive("resin volume", resin);
  }

  /**
   * The volume that a bed of a rating usually has: 1 ft3 for each 32,000 rated grains, common
   * practice. Cycle water rests on it where the true volume is not known.
   */
  public static Volume usualVolume(HardnessAmount rated) {
    return Volume.ofCubicFeet(rated.grains() / RATED_GRAINS_PER_CUBIC_FOOT);
  }

  @Override
  public Method method() {
    return Method.RATED_CAPACITY;
  }

  @Override
  public HardnessAmount usable() {
    return rated.times(USABLE_SHARE);
  }

  @Override
  public Mass saltPerRegeneration() {
    return regenerant.equalTo(Mass.ofPounds(POUNDS * usable().grains() / FOR_GRAINS));
  }

  @Override
  public List<Step> steps() {
    return List.of(
        new Step(
            StepKind.USABLE_FROM_RATING,
            List.of(Figure.of(USABLE_SHARE, 1), Figure.of(rated)),
            Figure.of(usable()),
            Sources.RATED_CAPACITY),
        new Step(
            StepKind.SALT_FROM_USABLE,
            List.of(
                Figure.of(usable()),
                Figure.of(FOR_GRAINS, 0),
                Figure.of(POUNDS, 0),
                Figure.of(regenerant.massRatio(), 4)),
            Figure.of(saltPerRegeneration()),
            Sources.RATED_CAPACITY));
  }
}

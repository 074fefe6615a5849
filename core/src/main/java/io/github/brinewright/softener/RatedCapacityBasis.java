package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * Usable capacity = 0.8 × rated; salt = 3 lb for each 10,000 usable grains. Example: 32,000 rated →
 * 25,600 usable, 7.68 lb. Source: common practice.
 *
 * @param rated the rating; 1,000 to 1,000,000 grains
 * @param resin volume of the bed; from the usual volume of the smallest rating to that of the
 *     highest, 0.03125 to 31.25 ft3
 * @param regenerant the salt used
 */
public record RatedCapacityBasis(HardnessAmount rated, Volume resin, Regenerant regenerant)
    implements CapacityBasis {
  private static final double USABLE_SHARE = 0.8;
  private static final double POUNDS = 3;
  private static final double FOR_GRAINS = 10_000;
  private static final double RATED_GRAINS_PER_CUBIC_FOOT = 32_000;

  /** Ratings that a softener may have: 1,000 to 1,000,000 grains. */
  public static final Bounds<HardnessAmount> RATING =
      Bounds.of(HardnessAmount.ofGrains(1_000), HardnessAmount.ofGrains(1_000_000));

  /** Volumes that a rated bed may have: those usual for the lowest and the highest rating. */
  public static final Bounds<Volume> RESIN_VOLUME =
      Bounds.of(usualVolume(RATING.low()), usualVolume(RATING.high()));

  /**
   * @param rated the rating
   * @param resin volume of the bed
   * @param regenerant the salt used
   * @throws IllegalArgumentException outside the ranges above
   */
  public RatedCapacityBasis {
    RATING.require("rated capacity", rated);
    RESIN_VOLUME.require("resin volume", resin);
  }

  /**
   * {@return the volume that a bed of a rating usually has: 1 ft3 for each 32,000 rated grains,
   * common practice} Cycle water rests on it where the true volume is not known.
   *
   * @param rated 1,000 to 1,000,000 grains
   * @throws IllegalArgumentException outside that range
   */
  public static Volume usualVolume(HardnessAmount rated) {
    RATING.require("rated capacity", rated);
    return Volume.ofCubicFeet(rated.grains() / RATED_GRAINS_PER_CUBIC_FOOT);
  }

  /**
   * {@return the rating that a bed of a volume usually has: 32,000 grains for each 1 ft3, common
   * practice}
   *
   * @param resin volume of the bed; 0.03125 to 31.25 ft3
   * @throws IllegalArgumentException outside that range
   */
  public static HardnessAmount usualRating(Volume resin) {
    RESIN_VOLUME.require("resin volume", resin);
    return HardnessAmount.ofGrains(resin.cubicFeet() * RATED_GRAINS_PER_CUBIC_FOOT);
  }

  @Override
  public Method method() {
    return Method.RATED_CAPACITY;
  }

  private Worked<HardnessAmount> workedUsable() {
    return Worked.of(
        StepKind.USABLE_FROM_RATING,
        Sources.RATED_CAPACITY,
        USABLE_SHARE,
        rated,
        (share, rating) -> rating.times(share));
  }

  private Worked<Mass> workedSalt() {
    return Worked.of(
        StepKind.SALT_FROM_USABLE,
        Sources.RATED_CAPACITY,
        usable(),
        FOR_GRAINS,
        POUNDS,
        regenerant.massRatio(),
        (usable, grains, pounds, ratio) ->
            Mass.ofPounds(pounds * usable.grains() / grains).times(ratio));
  }

  @Override
  public HardnessAmount usable() {
    return workedUsable().value();
  }

  @Override
  public Mass saltPerRegeneration() {
    return workedSalt().value();
  }

  @Override
  public List<Step> steps() {
    return List.of(workedUsable().step(), workedSalt().step());
  }
}

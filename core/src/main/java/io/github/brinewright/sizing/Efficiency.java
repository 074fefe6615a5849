package io.github.brinewright.sizing;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.quantity.WaterEfficiency;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * How well salt and water are used: usable capacity ÷ the salt really given, and regeneration water
 * for each 1,000 usable grains. Example: 25,600 grains with 7.8 lb → 3,282 grains a pound. Source:
 * quotient of the figures named.
 */
public final class Efficiency implements Explained {
  private final Worked<SaltEfficiency> salt;
  private final Worked<WaterEfficiency> water;

  /**
   * The efficiency of a regeneration.
   *
   * @param usable capacity that it restores; more than zero
   * @param saltGiven salt that it takes; more than zero
   * @param cycleWater water that it takes
   */
  Efficiency(HardnessAmount usable, Mass saltGiven, Volume cycleWater) {
    salt =
        Worked.of(
            StepKind.SALT_EFFICIENCY,
            Sources.DEFINITION,
            usable,
            saltGiven,
            (grains, pounds) -> pounds.per(grains));
    water =
        Worked.of(
            StepKind.WATER_EFFICIENCY,
            Sources.DEFINITION,
            cycleWater,
            usable,
            (gallons, grains) ->
                WaterEfficiency.ofGallonsPerThousandGrains(
                    1000 * gallons.gallons() / grains.grains()));
  }

  /** {@return the grains for each pound of salt given} */
  public SaltEfficiency salt() {
    return salt.value();
  }

  /** {@return the regeneration water for each 1,000 grains} */
  public WaterEfficiency water() {
    return water.value();
  }

  @Override
  public List<Step> steps() {
    return List.of(salt.step(), water.step());
  }
}

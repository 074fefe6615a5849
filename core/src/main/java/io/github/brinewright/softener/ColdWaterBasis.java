package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;

/**
 * A basis in cold water: less capacity for the same salt. Example: a share of 0.875 of 17,781
 * grains → 15,558 grains. Source: {@link ColdWater}.
 *
 * @param warm the basis in water of 50 °F or more
 * @param share of its capacity that is left; 0.1 to 1; dimensionless
 */
public record ColdWaterBasis(CapacityBasis warm, double share) implements CapacityBasis {
  /** Shares that may be left: 0.1 to 1; dimensionless. */
  public static final Bounds<Double> SHARE = Bounds.of(0.1, 1.0);

  /**
   * @param warm the basis in water of 50 °F or more
   * @param share of its capacity that is left
   * @throws IllegalArgumentException outside the range above
   */
  public ColdWaterBasis {
    SHARE.require("share of the capacity in cold water", share);
  }

  @Override
  public Method method() {
    return warm.method();
  }

  private Worked<HardnessAmount> workedUsable() {
    return Worked.of(
        StepKind.USABLE_IN_COLD_WATER,
        Sources.COLD_WATER,
        share,
        warm.usable(),
        (left, usable) -> usable.times(left));
  }

  @Override
  public HardnessAmount usable() {
    return workedUsable().value();
  }

  @Override
  public Mass saltPerRegeneration() {
    return warm.saltPerRegeneration();
  }

  @Override
  public Volume resin() {
    return warm.resin();
  }

  @Override
  public Regenerant regenerant() {
    return warm.regenerant();
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(warm.steps());
    steps.add(workedUsable().step());
    return List.copyOf(steps);
  }
}

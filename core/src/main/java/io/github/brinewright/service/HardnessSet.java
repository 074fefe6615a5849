package io.github.brinewright.service;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Hardness;
import java.util.Optional;

/** A hardness that a meter is set to, against that of the water; controls take whole grains. */
final class HardnessSet {
  private static final Hardness STEP = Hardness.ofGrainsPerGallon(1);
  private static final double BELOW = 0.05;
  private static final double ABOVE = 0.1;

  private final Hardness compensated;
  private final Hardness tested;

  HardnessSet(HomeLoad home) {
    compensated = home.compensatedHardness();
    tested = home.site().softenedWater().hardness();
  }

  /** Too low without iron and manganese, or too low at all. */
  Optional<FaultKind> tooLow(Hardness set) {
    if (!below(set, compensated)) {
      return Optional.empty();
    }
    return Optional.of(
        below(set, tested) ? FaultKind.HARDNESS_SET_TOO_LOW : FaultKind.HARDNESS_WITHOUT_IRON);
  }

  private static boolean below(Hardness set, Hardness right) {
    return right.minus(set).compareTo(STEP.max(right.times(BELOW))) > 0;
  }

  boolean tooHigh(Hardness set) {
    return set.minus(compensated).compareTo(STEP.max(compensated.times(ABOVE))) > 0;
  }
}

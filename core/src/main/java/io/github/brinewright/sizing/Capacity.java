package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one tank holds for the home. Of tanks that take turns, the one that serves softens the water
 * of the other's regeneration besides.
 */
final class Capacity implements Explained {
  /** A bed that its own regeneration water exhausts serves next to nothing. */
  private static final double NEXT_TO_NOTHING = 1e-6;

  private final HardnessAmount usable;
  private final @Nullable Worked<HardnessAmount> besideTwin;

  private Capacity(HardnessAmount usable, @Nullable Worked<HardnessAmount> besideTwin) {
    this.usable = usable;
    this.besideTwin = besideTwin;
  }

  /** All that the tank can take is for the home. */
  static Capacity whole(HardnessAmount usable) {
    return new Capacity(usable, null);
  }

  /** Less the water of a regeneration, at the hardness that loads the bed. */
  static Capacity besideTwin(HardnessAmount usable, Volume regeneration, Hardness hardness) {
    Worked<HardnessAmount> left =
        Worked.of(
            StepKind.USABLE_BESIDE_TWIN,
            Sources.DEFINITION,
            usable,
            regeneration,
            hardness,
            (all, water, compensated) -> all.minus(compensated.in(water)));
    return left.value().isPositive()
        ? new Capacity(left.value(), left)
        : whole(usable.times(NEXT_TO_NOTHING));
  }

  HardnessAmount usable() {
    return usable;
  }

  @Override
  public List<Step> steps() {
    return besideTwin == null ? List.of() : besideTwin.steps();
  }
}

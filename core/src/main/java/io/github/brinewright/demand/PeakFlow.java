package io.github.brinewright.demand;

import io.github.brinewright.source.Sources;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.units.FlowRate;
import java.util.List;

/**
 * The flow that a home may draw at its busiest moment: 3 gpm for kitchen and laundry and 3 gpm for
 * each bathroom. Example: 2 bathrooms → 9 gpm. Source: common practice; local code decides.
 *
 * @param bathrooms 0.5 to 20
 */
public record PeakFlow(double bathrooms) implements Explained {
  private static final FlowRate KITCHEN_AND_LAUNDRY = FlowRate.ofGallonsPerMinute(3);
  private static final FlowRate EACH_BATHROOM = FlowRate.ofGallonsPerMinute(3);

  /** The peak flow. */
  public FlowRate value() {
    return KITCHEN_AND_LAUNDRY.plus(EACH_BATHROOM.times(bathrooms));
  }

  @Override
  public List<Step> steps() {
    return List.of(
        new Step(
            StepKind.PEAK_BY_BATHROOMS,
            List.of(
                Figure.of(KITCHEN_AND_LAUNDRY), Figure.of(EACH_BATHROOM), Figure.of(bathrooms, 1)),
            Figure.of(value()),
            Sources.PEAK_BY_BATHROOMS));
  }
}

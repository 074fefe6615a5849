package io.github.brinewright.home;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Pressure;
import java.util.Optional;

/**
 * What the main or the well delivers at the home.
 *
 * @param pressure static pressure; empty when it was not measured
 * @param flow the most it delivers; empty when it was not measured
 */
public record Supply(Optional<Pressure> pressure, Optional<FlowRate> flow) {
  /** Neither pressure nor flow was measured. */
  public static final Supply NOT_MEASURED = new Supply(Optional.empty(), Optional.empty());
}

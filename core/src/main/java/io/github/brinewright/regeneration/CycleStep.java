package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Volume;
import java.time.Duration;

/**
 * One step of a regeneration.
 *
 * @param kind which step
 * @param time how long it runs
 * @param flow water that enters through the valve
 */
public record CycleStep(Kind kind, Duration time, FlowRate flow) {
  /** The steps in the order in which they run. */
  public enum Kind {
    BACKWASH,
    BRINE_DRAW,
    SLOW_RINSE,
    FAST_RINSE,
    BRINE_REFILL
  }

  /** Water the step takes from the supply. */
  public Volume water() {
    return flow.during(time);
  }
}

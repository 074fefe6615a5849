package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import java.time.Duration;

/**
 * One step of a regeneration.
 *
 * @param kind which step
 * @param time how long it runs; more than zero
 * @param flow water that enters through the valve; more than zero
 */
public record CycleStep(Kind kind, Duration time, FlowRate flow) {
  /**
   * @param kind which step
   * @param time how long it runs
   * @param flow water that enters through the valve
   * @throws IllegalArgumentException when time or flow is not more than zero
   */
  public CycleStep {
    if (time.isNegative() || time.isZero()) {
      throw new IllegalArgumentException(
          kind + " is " + time + " long, but must be more than zero");
    }
    Require.positive("flow of " + kind, flow);
  }

  /** The steps in the order in which they run. */
  public enum Kind {
    /** Water lifts the bed from below and washes it. */
    BACKWASH,

    /** Brine is drawn through the bed. */
    BRINE_DRAW,

    /** Water pushes the brine through the bed. */
    SLOW_RINSE,

    /** Water settles the bed and rinses it. */
    FAST_RINSE,

    /** Water runs into the brine tank for the next time. */
    BRINE_REFILL
  }

  /** {@return the water the step takes from the supply} */
  public Volume water() {
    return flow.during(time);
  }
}

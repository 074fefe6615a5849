package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import java.util.Optional;

/** When a candidate regenerates, on the design day and over a year of expected use. */
public sealed interface Schedule extends Explained permits ClockSchedule, MeteredSchedule {
  /** The longest interval allowed, so that the bed does not stand too long: common practice. */
  int LONGEST_DAYS = 14;

  /** Days between regenerations at design use, zero or more; a clock's are whole. */
  double designDays();

  /** Days between regenerations at expected use; above 0 to 14. */
  double expectedDays();

  /** The volume after which a meter starts a regeneration; empty for a clock. */
  Optional<Volume> setVolume();

  /**
   * The share of intervals at expected use in which the bed runs out before its regeneration, in
   * closed form; dimensionless.
   */
  double runOutShare();

  /** Whether the bed serves the design day and leaves a setting above zero. */
  boolean feasible();

  /** Regenerations of a year at expected use. */
  double regenerationsPerYear();
}

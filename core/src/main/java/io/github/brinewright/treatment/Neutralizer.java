package io.github.brinewright.treatment;

import io.github.brinewright.quantity.Bounds;

/**
 * A bed that lifts the pH by dissolving.
 *
 * @param mineral of the bed
 * @param phAfter pH that it brings the water to; 6.5 to 8.5
 */
public record Neutralizer(NeutralizerMineral mineral, double phAfter) {
  /** pH behind a neutralizer: 6.5 to 8.5. Dimensionless. */
  public static final Bounds<Double> PH_AFTER = Bounds.of(6.5, 8.5);

  /**
   * @param mineral of the bed
   * @param phAfter pH that it brings the water to; 6.5 to 8.5
   * @throws IllegalArgumentException outside that range
   */
  public Neutralizer {
    PH_AFTER.require("pH after a neutralizer", phAfter);
  }
}

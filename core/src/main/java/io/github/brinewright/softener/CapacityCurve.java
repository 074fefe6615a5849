package io.github.brinewright.softener;

import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.trace.Step;

/**
 * Operating capacity of a resin against salt dosage. More salt never gives less capacity, and each
 * pound more gives less than the one before; outside its range a curve gives no answer.
 */
public sealed interface CapacityCurve permits LogarithmicCurve, TableCurve {
  /** What 100 % use of sodium chloride would reach: 7,000 × 50.04345 / 58.443 grains a pound. */
  SaltEfficiency CHEMICAL_LIMIT = SaltEfficiency.ofGrainsPerPound(7000 * 50.04345 / 58.443);

  /** The lowest dosage it answers for. */
  SaltDosage lowest();

  /** The highest dosage it answers for. */
  SaltDosage highest();

  /**
   * The operating capacity reached with a dosage.
   *
   * @throws IllegalArgumentException outside {@link #lowest()} to {@link #highest()}
   */
  ResinCapacity at(SaltDosage dosage);

  /** How {@link #at} was worked out for a dosage. */
  Step step(SaltDosage dosage);

  /** Whether the curve answers for a dosage. */
  default boolean covers(SaltDosage dosage) {
    return dosage.compareTo(lowest()) >= 0 && dosage.compareTo(highest()) <= 0;
  }

  /**
   * Returns {@code dosage}.
   *
   * @throws IllegalArgumentException when the curve does not answer for it
   */
  default SaltDosage requireCovered(SaltDosage dosage) {
    if (!covers(dosage)) {
      throw new IllegalArgumentException(
          "a dosage of "
              + dosage
              + " is outside the table, which runs from "
              + lowest()
              + " to "
              + highest());
    }
    return dosage;
  }
}

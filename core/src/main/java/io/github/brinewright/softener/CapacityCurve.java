package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.MolarMass;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.trace.Worked;

/**
 * Operating capacity of a resin against salt dosage. More salt never gives less capacity, and each
 * pound more gives less than the one before; outside its range a curve gives no answer.
 */
public sealed interface CapacityCurve permits LogarithmicCurve, TableCurve {
  /** Dosages that a curve may speak of: 1 to 30 lb/ft3. */
  Bounds<SaltDosage> DOSAGE =
      Bounds.of(SaltDosage.ofPoundsPerCubicFoot(1), SaltDosage.ofPoundsPerCubicFoot(30));

  /** Capacities that a curve may speak of: 1,000 to 60,000 grains/ft3. */
  Bounds<ResinCapacity> CAPACITY =
      Bounds.of(
          ResinCapacity.ofGrainsPerCubicFoot(1_000), ResinCapacity.ofGrainsPerCubicFoot(60_000));

  /** What 100 % use of sodium chloride would reach: 7,000 grains × 50.04345 ÷ 58.443. */
  SaltEfficiency CHEMICAL_LIMIT =
      SaltEfficiency.ofGrainsPerPound(
          7000 * (MolarMass.CALCIUM_CARBONATE / 2) / MolarMass.SODIUM_CHLORIDE);

  /** {@return the lowest dosage it answers for} */
  SaltDosage lowest();

  /** {@return the highest dosage it answers for} */
  SaltDosage highest();

  /**
   * {@return the operating capacity reached with a dosage}
   *
   * @param dosage sodium chloride for each volume of resin; from {@link #lowest()} to {@link
   *     #highest()}
   * @throws IllegalArgumentException outside {@link #lowest()} to {@link #highest()}
   */
  default ResinCapacity at(SaltDosage dosage) {
    return worked(dosage).value();
  }

  /**
   * {@return the operating capacity reached with a dosage, and how it was worked out}
   *
   * @param dosage sodium chloride for each volume of resin; from {@link #lowest()} to {@link
   *     #highest()}
   * @throws IllegalArgumentException outside {@link #lowest()} to {@link #highest()}
   */
  Worked<ResinCapacity> worked(SaltDosage dosage);

  /** {@return what its capacities are stated on; a dealer's own table is a basis of its own} */
  CurveBasis basis();

  /** {@return the dosages that it answers for} */
  default Bounds<SaltDosage> dosages() {
    return Bounds.of(lowest(), highest());
  }

  /**
   * {@return whether the curve answers for a dosage}
   *
   * @param dosage sodium chloride for each volume of resin
   */
  default boolean covers(SaltDosage dosage) {
    return dosages().holds(dosage);
  }

  /**
   * {@return {@code dosage}}
   *
   * @param dosage must lie from {@link #lowest()} to {@link #highest()}
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

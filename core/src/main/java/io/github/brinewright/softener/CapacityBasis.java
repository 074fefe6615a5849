package io.github.brinewright.softener;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;

/**
 * The one place a usable capacity and its salt come from.
 *
 * <p>Interval, brine refill, yearly salt and cost take a basis and nothing else, so a rating can
 * never slip into one of them while another rests on the usable capacity.
 */
public sealed interface CapacityBasis extends Explained
    permits DosageCurveBasis, RatedCapacityBasis, ColdWaterBasis {
  /** The two methods; a proposal always names the one used. */
  enum Method {
    /** Resin volume and salt dosage are known. */
    DOSAGE_CURVE,
    /** Only a rating in grains is known. */
    RATED_CAPACITY
  }

  /** {@return how the usable capacity was found} */
  Method method();

  /** {@return the hardness the bed takes between two regenerations} */
  HardnessAmount usable();

  /** {@return the salt that restores exactly {@link #usable()}} */
  Mass saltPerRegeneration();

  /** {@return the volume of the bed} */
  Volume resin();

  /** {@return the regenerant that {@link #saltPerRegeneration()} speaks of} */
  Regenerant regenerant();

  /** {@return the grains removed for each pound of salt} */
  default SaltEfficiency efficiency() {
    return saltPerRegeneration().per(usable());
  }
}

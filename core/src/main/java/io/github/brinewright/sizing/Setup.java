package io.github.brinewright.sizing;

import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to set up one softener.
 *
 * @param softener the softener
 * @param basis its capacity and salt; of the same bed and salt as the softener, not necessarily one
 *     of its stocked dosages
 * @param control what starts a regeneration
 */
public record Setup(Softener softener, CapacityBasis basis, Control control) {
  /**
   * @param softener the softener
   * @param basis its capacity and salt
   * @param control what starts a regeneration
   * @throws IllegalArgumentException when the basis is that of another bed or another salt, or
   *     tanks that take turns have another control than {@link Control#METERED_AT_ONCE}
   */
  public Setup {
    if (!basis.resin().equals(softener.resinVolume())
        || basis.regenerant() != softener.regenerant()) {
      throw new IllegalArgumentException(
          "a basis of "
              + basis.resin()
              + " with "
              + basis.regenerant()
              + " is not one of the bed of "
              + softener);
    }
    if (!fits(softener, control)) {
      throw new IllegalArgumentException(
          "tanks that take turns are metered, at once, but the control is " + control);
    }
  }

  /**
   * {@return whether a control can be on a softener: tanks that take turns are metered, at once}
   *
   * @param softener the softener
   * @param control what starts a regeneration
   */
  public static boolean fits(Softener softener, Control control) {
    return softener.arrangement() != Arrangement.TWIN_ALTERNATING
        || control == Control.METERED_AT_ONCE;
  }

  /**
   * {@return every setting of a softener: its capacity bases times its controls}
   *
   * @param softener the softener
   */
  public static List<Setup> of(Softener softener) {
    List<Setup> all = new ArrayList<>();
    for (CapacityBasis basis : softener.bases()) {
      for (Control control : softener.controls()) {
        all.add(new Setup(softener, basis, control));
      }
    }
    return all;
  }

  /** {@return the salt dosage; empty when the softener is sized by its rating} */
  public Optional<SaltDosage> dosage() {
    return basis instanceof DosageCurveBasis curve ? Optional.of(curve.dosage()) : Optional.empty();
  }
}

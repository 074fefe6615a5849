package io.github.brinewright.sizing;

import io.github.brinewright.regeneration.Control;
import io.github.brinewright.resin.CapacityBasis;
import io.github.brinewright.resin.DosageCurveBasis;
import io.github.brinewright.units.SaltDosage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to set up one unit.
 *
 * @param unit the unit
 * @param basis its capacity and salt
 * @param control what starts a regeneration
 */
public record Candidate(SoftenerUnit unit, CapacityBasis basis, Control control) {
  /** Every setting of a unit: its capacity bases times its controls. */
  public static List<Candidate> of(SoftenerUnit unit) {
    List<Candidate> all = new ArrayList<>();
    for (CapacityBasis basis : unit.bases()) {
      for (Control control : unit.controls()) {
        all.add(new Candidate(unit, basis, control));
      }
    }
    return all;
  }

  /** The salt dosage; empty when the unit is sized by its rating. */
  public Optional<SaltDosage> dosage() {
    return basis instanceof DosageCurveBasis curve ? Optional.of(curve.dosage()) : Optional.empty();
  }
}

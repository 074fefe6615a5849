package io.github.brinewright.softener;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Length;

/**
 * A cation resin in sodium form.
 *
 * @param id its name in files
 * @param name its name on paper
 * @param curve operating capacity against salt dosage
 * @param beadSize mean bead diameter
 * @param beadDensity density of a wet bead
 */
public record Resin(
    String id, String name, CapacityCurve curve, Length beadSize, Density beadDensity) {
  /** Mean bead of a standard gel resin, 0.60 mm: common practice. */
  public static final Length USUAL_BEAD = Length.ofMillimetres(0.60);

  /** Wet density of a standard gel bead, 1,280 kg/m3: common practice. */
  public static final Density USUAL_DENSITY = Density.ofKilogramsPerCubicMetre(1280);

  /** A resin with usual beads. */
  public static Resin of(String id, String name, CapacityCurve curve) {
    return new Resin(id, name, curve, USUAL_BEAD, USUAL_DENSITY);
  }
}

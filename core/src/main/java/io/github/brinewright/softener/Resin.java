package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Require;

/**
 * A cation resin in sodium form.
 *
 * @param id its name in files; not blank
 * @param name its name on paper; not blank
 * @param curve operating capacity against salt dosage
 * @param beadSize mean bead diameter; 0.2 to 1.5 mm
 * @param beadDensity density of a wet bead; 1,050 to 1,600 kg/m3
 */
public record Resin(
    String id, String name, CapacityCurve curve, Length beadSize, Density beadDensity) {
  /** Mean bead of a standard gel resin, 0.60 mm: common practice. */
  public static final Length USUAL_BEAD = Length.ofMillimetres(0.60);

  /** Wet density of a standard gel bead, 1,280 kg/m3: common practice. */
  public static final Density USUAL_DENSITY = Density.ofKilogramsPerCubicMetre(1280);

  /** Mean diameter of a bead: 0.2 to 1.5 mm. */
  public static final Bounds<Length> BEAD_SIZE =
      Bounds.of(Length.ofMillimetres(0.2), Length.ofMillimetres(1.5));

  /** Density of a wet bead: 1,050 to 1,600 kg/m3, so that it settles in any water. */
  public static final Bounds<Density> BEAD_DENSITY =
      Bounds.of(Density.ofKilogramsPerCubicMetre(1_050), Density.ofKilogramsPerCubicMetre(1_600));

  /**
   * @param id its name in files
   * @param name its name on paper
   * @param curve operating capacity against salt dosage
   * @param beadSize mean bead diameter
   * @param beadDensity density of a wet bead
   * @throws IllegalArgumentException outside the ranges above
   */
  public Resin {
    Require.notBlank("resin id", id);
    Require.notBlank("resin name", name);
    BEAD_SIZE.require("bead size", beadSize);
    BEAD_DENSITY.require("bead density", beadDensity);
  }

  /**
   * {@return a resin with usual beads}
   *
   * @param id its name in files; not blank
   * @param name its name on paper; not blank
   * @param curve operating capacity against salt dosage
   * @throws IllegalArgumentException when a name is blank
   */
  public static Resin of(String id, String name, CapacityCurve curve) {
    return new Resin(id, name, curve, USUAL_BEAD, USUAL_DENSITY);
  }
}

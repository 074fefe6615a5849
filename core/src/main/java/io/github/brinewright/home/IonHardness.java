package io.github.brinewright.home;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;

/** Hardness from a laboratory's calcium and magnesium. */
public final class IonHardness {
  private static final double CACO3_PER_CALCIUM = 2.497;
  private static final double CACO3_PER_MAGNESIUM = 4.118;

  private IonHardness() {}

  /**
   * {@return the hardness as CaCO3: 2.497 Ca + 4.118 Mg, all in mg/L} Example: Ca 20, Mg 10 → 91.12
   * mg/L. Source: Standard Methods 2340 B.
   *
   * @param calcium 0 to 50,000 mg/L
   * @param magnesium 0 to 50,000 mg/L
   * @throws IllegalArgumentException outside that range
   */
  public static Hardness of(Concentration calcium, Concentration magnesium) {
    Substance.FOUND.require("calcium", calcium);
    Substance.FOUND.require("magnesium", magnesium);
    return Hardness.ofMilligramsPerLitre(
        CACO3_PER_CALCIUM * calcium.milligramsPerLitre()
            + CACO3_PER_MAGNESIUM * magnesium.milligramsPerLitre());
  }
}

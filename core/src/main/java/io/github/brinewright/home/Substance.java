package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;

/** What a water analysis may state besides hardness, each in mg/L of the substance itself. */
public enum Substance {
  IRON,
  DISSOLVED_IRON,
  MANGANESE,
  TOTAL_DISSOLVED_SOLIDS,
  SODIUM,
  CHLORIDE,
  FREE_CHLORINE,
  HYDROGEN_SULFIDE;

  /** What may be found of a substance: 0 to 50,000 mg/L. */
  public static final Bounds<Concentration> FOUND =
      Bounds.of(Concentration.ofMilligramsPerLitre(0), Concentration.ofMilligramsPerLitre(50_000));
}

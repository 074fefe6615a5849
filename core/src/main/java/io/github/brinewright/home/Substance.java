package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;

/**
 * What a water analysis may state besides hardness, each in mg/L: of the substance itself unless
 * said otherwise.
 */
public enum Substance {
  /** All iron, dissolved or not. */
  IRON,

  /** Iron that is dissolved: clear when drawn. */
  DISSOLVED_IRON,

  /** Manganese. */
  MANGANESE,

  /** Everything that is dissolved. */
  TOTAL_DISSOLVED_SOLIDS,

  /** Sodium of the raw water. */
  SODIUM,

  /** Chloride. */
  CHLORIDE,

  /** Chlorine that still disinfects. */
  FREE_CHLORINE,

  /** Hydrogen sulfide, which smells of rotten eggs. */
  HYDROGEN_SULFIDE,

  /** Chloramine, as Cl2: chlorine bound to ammonia. */
  CHLORAMINE,

  /** Alkalinity, as CaCO3. */
  ALKALINITY,

  /** Carbon dioxide that is dissolved. */
  CARBON_DIOXIDE,

  /** Nitrate, as nitrogen. */
  NITRATE;

  /** What may be found of a substance: 0 to 50,000 mg/L. */
  public static final Bounds<Concentration> FOUND =
      Bounds.of(Concentration.ofMilligramsPerLitre(0), Concentration.ofMilligramsPerLitre(50_000));
}

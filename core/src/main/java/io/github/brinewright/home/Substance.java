package io.github.brinewright.home;

/** What a water analysis may state besides hardness, each in mg/L of the substance itself. */
public enum Substance {
  IRON,
  DISSOLVED_IRON,
  MANGANESE,
  TOTAL_DISSOLVED_SOLIDS,
  SODIUM,
  CHLORIDE,
  FREE_CHLORINE,
  HYDROGEN_SULFIDE
}

package io.github.brinewright.water;

import io.github.brinewright.units.Hardness;

/** The classes of the US Geological Survey (Water-Supply Paper 1812): 60, 120 and 180 mg/L. */
public enum HardnessClass {
  SOFT(60),
  MODERATELY_HARD(120),
  HARD(180),
  VERY_HARD(Double.POSITIVE_INFINITY);

  private final double upToMilligramsPerLitre;

  HardnessClass(double upToMilligramsPerLitre) {
    this.upToMilligramsPerLitre = upToMilligramsPerLitre;
  }

  /** The class of the given hardness; a limit belongs to the softer class. */
  public static HardnessClass of(Hardness hardness) {
    for (HardnessClass each : values()) {
      if (hardness.milligramsPerLitre() <= each.upToMilligramsPerLitre) {
        return each;
      }
    }
    return VERY_HARD;
  }
}

package io.github.brinewright.home;

import io.github.brinewright.quantity.Hardness;
import java.util.Arrays;
import java.util.List;

/** The classes of the US Geological Survey (Water-Supply Paper 1812): 60, 120 and 180 mg/L. */
public enum HardnessClass {
  /** Up to 60 mg/L as CaCO3. */
  SOFT(60),

  /** Above 60 to 120 mg/L as CaCO3. */
  MODERATELY_HARD(120),

  /** Above 120 to 180 mg/L as CaCO3. */
  HARD(180),

  /** Above 180 mg/L as CaCO3. */
  VERY_HARD(Double.POSITIVE_INFINITY);

  private final double upToMilligramsPerLitre;

  HardnessClass(double upToMilligramsPerLitre) {
    this.upToMilligramsPerLitre = upToMilligramsPerLitre;
  }

  /** {@return where each class but the last ends, from the softest} */
  public static List<Hardness> limits() {
    return Arrays.stream(values())
        .filter(each -> each != VERY_HARD)
        .map(each -> Hardness.ofMilligramsPerLitre(each.upToMilligramsPerLitre))
        .toList();
  }

  /**
   * {@return the class of the given hardness; a limit belongs to the softer class}
   *
   * @param hardness total hardness of a water
   */
  public static HardnessClass of(Hardness hardness) {
    for (HardnessClass each : values()) {
      if (hardness.milligramsPerLitre() <= each.upToMilligramsPerLitre) {
        return each;
      }
    }
    return VERY_HARD;
  }
}

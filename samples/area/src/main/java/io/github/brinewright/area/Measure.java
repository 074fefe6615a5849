package io.github.brinewright.area;

import java.util.Locale;

/**
 * What is added up over homes, each in whole numbers of a small unit, so that a sum is the same in
 * any order. A million homes stay a thousand times below the largest of these numbers.
 */
public enum Measure {
  /** Salt of a year, of either kind, in milligrams. */
  SALT_MG,
  /** The part of it that is potassium chloride, in milligrams. */
  POTASSIUM_CHLORIDE_MG,
  /** Chloride of a year to the sewer, in milligrams. */
  CHLORIDE_MG,
  /** Water of a year's regenerations, in millilitres. */
  WATER_ML,
  /** Regenerations of a year, in millionths. */
  REGENERATIONS_MILLIONTHS,
  /** Hard water of a year that passes, from all causes, in millilitres. */
  HARD_WATER_ML,
  /** The same as days of each home's mean use, in millionths. */
  HARD_DAYS_MILLIONTHS,
  /** Days of a year on which a bed has run out, in millionths. */
  RUN_OUT_DAYS_MILLIONTHS;

  /** {@return its name in files, as {@code salt_mg}} */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Bounds;

/**
 * What nobody can see of a present softener, as one draw of it.
 *
 * @param lossAYear capacity lost with each year of age; 0.01 to 0.05, dimensionless
 * @param salt place within the range of the salt where it is not known; 0 to 1, dimensionless
 */
public record FoundUnknowns(double lossAYear, double salt) {
  /** Capacity lost with each year of age: 0.01 to 0.05, UFC 3-240-13FN; dimensionless. */
  public static final Bounds<Double> LOSS_A_YEAR =
      Bounds.of(AgeLoss.LEAST_A_YEAR, AgeLoss.MOST_A_YEAR);

  /** Places within a range: 0 to 1; dimensionless. */
  public static final Bounds<Double> PLACE = Bounds.of(0.0, 1.0);

  /** The middle: 3 % a year, and the salt that is assumed. */
  public static final FoundUnknowns MIDDLE = new FoundUnknowns(AgeLoss.USUAL, 0.5);

  /**
   * @param lossAYear capacity lost with each year of age
   * @param salt place within the range of the salt where it is not known
   * @throws IllegalArgumentException outside the ranges above
   */
  public FoundUnknowns {
    LOSS_A_YEAR.require("capacity lost a year", lossAYear);
    PLACE.require("place within the range of the salt", salt);
  }

  /**
   * {@return the draw at two places of its ranges}
   *
   * @param age place between the least and the most that a year takes; 0 to 1, dimensionless
   * @param salt place within the range of the salt; 0 to 1, dimensionless
   * @throws IllegalArgumentException outside the ranges above
   */
  public static FoundUnknowns at(double age, double salt) {
    PLACE.require("place within the range of the loss of a year", age);
    double loss = AgeLoss.LEAST_A_YEAR + age * (AgeLoss.MOST_A_YEAR - AgeLoss.LEAST_A_YEAR);
    return new FoundUnknowns(loss, salt);
  }
}

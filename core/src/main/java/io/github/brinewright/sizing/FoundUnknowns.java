package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Require;

/**
 * What nobody can see of a present softener, as one draw of it.
 *
 * @param lossAYear capacity lost with each year of age; 0.01 to 0.05, dimensionless
 * @param salt place within the range of the salt where it is not known; 0 to 1, dimensionless
 */
public record FoundUnknowns(double lossAYear, double salt) {
  /** The middle: 3 % a year, and the salt that is assumed. */
  public static final FoundUnknowns MIDDLE = new FoundUnknowns(AgeLoss.USUAL, 0.5);

  /**
   * @param lossAYear capacity lost with each year of age
   * @param salt place within the range of the salt where it is not known
   * @throws IllegalArgumentException outside the ranges above
   */
  public FoundUnknowns {
    Require.between("capacity lost a year", lossAYear, AgeLoss.LEAST_A_YEAR, AgeLoss.MOST_A_YEAR);
    Require.between("place within the range of the salt", salt, 0, 1);
  }

  /**
   * {@return the draw at two places of its ranges}
   *
   * @param age place between the least and the most that a year takes; 0 to 1, dimensionless
   * @param salt place within the range of the salt; 0 to 1, dimensionless
   */
  public static FoundUnknowns at(double age, double salt) {
    double loss = AgeLoss.LEAST_A_YEAR + age * (AgeLoss.MOST_A_YEAR - AgeLoss.LEAST_A_YEAR);
    return new FoundUnknowns(loss, salt);
  }
}

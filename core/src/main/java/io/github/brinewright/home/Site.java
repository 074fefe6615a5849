package io.github.brinewright.home;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Require;

/**
 * One home as the visit found it.
 *
 * @param id short name within a job
 * @param contact whose home it is
 * @param water what was found in the water
 * @param household who lives there
 * @param supply what the main or well delivers
 * @param allowances hardness added for iron and manganese
 * @param target hardness to blend to through a bypass; zero for fully soft water
 */
public record Site(
    String id,
    Customer contact,
    WaterAnalysis water,
    Household household,
    Supply supply,
    FoulingAllowances allowances,
    Hardness target) {
  /**
   * @throws IllegalArgumentException when the target is negative or not below the raw hardness
   */
  public Site {
    Require.notNegative("target hardness", target);
    if (target.compareTo(water.hardness()) >= 0) {
      throw new IllegalArgumentException(
          "a target hardness of "
              + target
              + " is not below the "
              + water.hardness()
              + " of the raw water; leave it empty for fully soft water");
    }
  }

  /** The same home with other people in it. */
  public Site withPeople(int number) {
    return new Site(id, contact, water, household.withPeople(number), supply, allowances, target);
  }

  /** The same home with harder or softer water; the target must stay below it. */
  public Site withHardness(Hardness hardness) {
    return new Site(
        id, contact, water.withHardness(hardness), household, supply, allowances, target);
  }

  /** A home with the usual allowances whose supply was not measured. */
  public static Site of(String id, WaterAnalysis water, Household household) {
    return new Site(
        id,
        Customer.named(id),
        water,
        household,
        Supply.NOT_MEASURED,
        FoulingAllowances.USUAL,
        Hardness.ofGrainsPerGallon(0));
  }
}

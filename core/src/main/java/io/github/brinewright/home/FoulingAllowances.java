package io.github.brinewright.home;

import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Require;

/**
 * Hardness added for iron and manganese. The allowance covers fouling of the bed, not exchange:
 * stoichiometry alone would give 0.105 and 0.106 gpg for each mg/L.
 *
 * @param iron usually 4 gpg per mg/L; published values run from 2 to 5
 * @param manganese usually 6 gpg per mg/L
 */
public record FoulingAllowances(FoulingAllowance iron, FoulingAllowance manganese) {
  /** 4 and 6 gpg for each mg/L: common practice. */
  public static final FoulingAllowances USUAL =
      new FoulingAllowances(
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(4),
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(6));

  /**
   * @throws IllegalArgumentException when an allowance is negative
   */
  public FoulingAllowances {
    Require.notNegative("iron allowance", iron);
    Require.notNegative("manganese allowance", manganese);
  }
}

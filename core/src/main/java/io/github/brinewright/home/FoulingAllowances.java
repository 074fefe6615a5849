package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FoulingAllowance;

/**
 * Hardness added for iron and manganese. The allowance covers fouling of the bed, not exchange:
 * stoichiometry alone would give 0.105 and 0.106 gpg for each mg/L.
 *
 * @param iron usually 4 gpg per mg/L; published values run from 2 to 5, accepted are 0 to 20
 * @param manganese usually 6 gpg per mg/L; accepted are 0 to 20
 */
public record FoulingAllowances(FoulingAllowance iron, FoulingAllowance manganese) {
  /** Allowances that are accepted: 0 to 20 gpg for each mg/L. */
  public static final Bounds<FoulingAllowance> ALLOWANCE =
      Bounds.of(
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(0),
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(20));

  /** 4 and 6 gpg for each mg/L: common practice. */
  public static final FoulingAllowances USUAL =
      new FoulingAllowances(
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(4),
          FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(6));

  /**
   * @param iron usually 4 gpg per mg/L
   * @param manganese usually 6 gpg per mg/L
   * @throws IllegalArgumentException outside the ranges above
   */
  public FoulingAllowances {
    ALLOWANCE.require("iron allowance", iron);
    ALLOWANCE.require("manganese allowance", manganese);
  }
}

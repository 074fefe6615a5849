package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How a dealer sells and how costs are compared. Rates are fractions.
 *
 * @param taxRate sales tax; 0 to 0.5
 * @param taxOnInstallation whether the installation is taxed too
 * @param depositShare share of the total due with the signature; 0 to 1
 * @param financing the credit offered, if any
 * @param years over which costs are compared; 1 to 30
 * @param discountRate yearly, of money itself; −0.05 to 0.2
 */
public record Terms(
    BigDecimal taxRate,
    boolean taxOnInstallation,
    BigDecimal depositShare,
    Optional<Credit> financing,
    int years,
    double discountRate) {
  /** No tax, no deposit, no credit; ten years at 3 %. */
  public static final Terms USUAL =
      new Terms(BigDecimal.ZERO, false, BigDecimal.ZERO, Optional.empty(), 10, 0.03);

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public Terms {
    Require.between("tax rate", taxRate.doubleValue(), 0, 0.5);
    Require.between("deposit share", depositShare.doubleValue(), 0, 1);
    Require.between("years", years, 1, 30);
    Require.between("discount rate", discountRate, -0.05, 0.2);
  }
}

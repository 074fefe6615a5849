package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;

/**
 * Yearly rise of prices, as fractions; −0.05 to 0.2 each.
 *
 * @param salt of salt, electricity and service
 * @param water of water and sewer
 */
public record Escalation(double salt, double water) {
  /** 2.3 % and 4.1 % a year: US consumer prices and water rates, LBNL 1996-2004 and Bluefield. */
  public static final Escalation USUAL = new Escalation(0.023, 0.041);

  /**
   * @param salt of salt, electricity and service
   * @param water of water and sewer
   * @throws IllegalArgumentException outside the range above
   */
  public Escalation {
    Require.between("rise of salt prices", salt, -0.05, 0.2);
    Require.between("rise of water prices", water, -0.05, 0.2);
  }
}

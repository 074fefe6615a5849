package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Temperature;

/**
 * The capacity that is left in cold water: all of it down to 50 °F, and in proportion less below,
 * to a share at 40 °F that goes on falling at the same rate. Example: 45 °F → 0.875. Source: common
 * practice; Michaud, Water Conditioning &amp; Purification, 2023, that it falls below 50 °F.
 *
 * @param atForty share left at 40 °F; 0.5 to 1; dimensionless
 */
public record ColdWater(double atForty) {
  /** Shares at 40 °F that are accepted: 0.5 to 1; dimensionless. */
  public static final Bounds<Double> AT_FORTY = Bounds.of(0.5, 1.0);

  /** Three quarters at 40 °F. */
  public static final ColdWater USUAL = new ColdWater(0.75);

  private static final double WARM_FAHRENHEIT = 50;
  private static final double APART = 10;
  private static final double LEAST = 0.1;

  /**
   * @param atForty share left at 40 °F
   * @throws IllegalArgumentException outside the range above
   */
  public ColdWater {
    AT_FORTY.require("share of the capacity at 40 °F", atForty);
  }

  /**
   * {@return the share that is left at a temperature of the water; 0.1 to 1; dimensionless}
   *
   * @param water temperature as it passes the bed
   */
  public double share(Temperature water) {
    double below = Math.max(0, WARM_FAHRENHEIT - water.fahrenheit()) / APART;
    return below < 1e-9 ? 1 : Math.max(LEAST, 1 - below * (1 - atForty));
  }

  /**
   * {@return a basis as it is in water of a temperature; the same one where nothing is lost}
   *
   * @param water temperature as it passes the bed
   * @param basis the basis in water of 50 °F or more
   */
  public CapacityBasis in(Temperature water, CapacityBasis basis) {
    double share = share(water);
    return share < 1 ? new ColdWaterBasis(basis, share) : basis;
  }
}

package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Require;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** How fast a single bead falls through water, and how fast a bed of them expands. */
public final class BeadSettling {
  /** Reynolds numbers that the drag law holds for: above 0 to 200,000; dimensionless. */
  public static final Bounds<Double> REYNOLDS = Bounds.of(1e-9, 2e5);

  private BeadSettling() {}

  /**
   * {@return the drag coefficient of a sphere} Source: Barati, Neyshabouri and Ahmadi (Powder
   * Technology 257, 2014, 11). Example: Reynolds 200 → 0.76822.
   *
   * @param reynolds 0.000000001 to 200,000; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public static double drag(double reynolds) {
    return dragAt(REYNOLDS.require("Reynolds number", reynolds));
  }

  private static double dragAt(double reynolds) {
    return 5.4856e9 * Math.tanh(4.3774e-9 / reynolds)
        + 0.0709 * Math.tanh(700.6574 / reynolds)
        + 0.3894 * Math.tanh(74.1539 / reynolds)
        - 0.1198 * Math.tanh(7429.0843 / reynolds)
        + 1.7174 * Math.tanh(9.9851 / (reynolds + 2.3384))
        + 0.4744;
  }

  /**
   * {@return the terminal velocity: the Reynolds number at which drag × Re² = 4 g d³ ρ (ρb − ρ) ÷
   * (3 μ²)} Example: 70 μm, 2,600 kg/m3 in water of 1,000 kg/m3 and 1 mPa s → 4.14 mm/s. Source:
   * balance of weight and drag.
   *
   * @param diameter of the bead; more than zero
   * @param bead heavier than the fluid
   * @param fluid density and viscosity of the liquid or gas
   * @throws IllegalArgumentException when the diameter is not more than zero, or the bead is not
   *     heavier than the fluid
   */
  public static FlowVelocity terminal(Length diameter, Density bead, Fluid fluid) {
    Require.positive("bead diameter", diameter);
    double rho = fluid.kilogramsPerCubicMetre();
    double mu = fluid.pascalSeconds();
    double d = diameter.metres();
    double heavier = bead.kilogramsPerCubicMetre() - rho;
    if (heavier <= 0) {
      throw new IllegalArgumentException("beads of " + bead + " do not settle in this water");
    }
    double target = 4 * Fluid.GRAVITY * d * d * d * rho * heavier / (3 * mu * mu);
    double reynolds =
        new BrentSolver(1e-12, 1e-12)
            .solve(500, re -> dragAt(re) * re * re - target, REYNOLDS.low(), REYNOLDS.high());
    return FlowVelocity.ofMetresPerSecond(reynolds * mu / (rho * d));
  }

  /**
   * {@return the exponent of Richardson and Zaki without wall term: 4.65 below Reynolds 0.2, 4.35
   * Re^−0.03 to 1, 4.45 Re^−0.1 to 500, 2.39 above} Example: 10 → 3.535. Source: Trans. IChemE 32
   * (1954) 35.
   *
   * @param reynolds of a single bead; 0.000000001 to 200,000; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public static double exponent(double reynolds) {
    REYNOLDS.require("Reynolds number", reynolds);
    if (reynolds < 0.2) {
      return 4.65;
    }
    if (reynolds < 1) {
      return 4.35 * Math.pow(reynolds, -0.03);
    }
    return reynolds < 500 ? 4.45 * Math.pow(reynolds, -0.1) : 2.39;
  }
}

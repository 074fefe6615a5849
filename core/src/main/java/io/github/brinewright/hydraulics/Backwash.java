package io.github.brinewright.hydraulics;

import io.github.brinewright.resin.Resin;
import io.github.brinewright.units.FlowVelocity;
import io.github.brinewright.units.Require;
import io.github.brinewright.units.Temperature;

/** The backwash that lifts a bed by a chosen share of its depth. */
public final class Backwash {
  /** Settled voidage. */
  private static final double SETTLED = 0.38;

  /** Half the bed depth again: the usual expansion. */
  public static final double USUAL_EXPANSION = 0.5;

  private Backwash() {}

  /**
   * Velocity = terminal velocity × voidage^n, with the voidage of the expanded bed 1 − 0.62 ÷ (1 +
   * expansion). Example: 0.60 mm beads of 1,280 kg/m3, 50 % at 50 °F → 5.15 gpm/ft2. Source:
   * Richardson and Zaki, Trans. IChemE 32 (1954) 35.
   *
   * @param resin its bead size and density
   * @param water 0 to 60 °C
   * @param expansion 0 to 1; dimensionless
   */
  public static FlowVelocity velocity(Resin resin, Temperature water, double expansion) {
    Require.between("bed expansion", expansion, 0, 1);
    Fluid fluid = Fluid.water(water);
    FlowVelocity terminal = BeadSettling.terminal(resin.beadSize(), resin.beadDensity(), fluid);
    double reynolds =
        fluid.kilogramsPerCubicMetre()
            * terminal.metresPerSecond()
            * resin.beadSize().metres()
            / fluid.pascalSeconds();
    double voidage = 1 - (1 - SETTLED) / (1 + expansion);
    return terminal.times(Math.pow(voidage, BeadSettling.exponent(reynolds)));
  }
}

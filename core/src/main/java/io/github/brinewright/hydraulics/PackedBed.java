package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Parts;
import java.util.List;

/**
 * A settled bed of beads.
 *
 * @param depth more than zero
 * @param beadSize mean bead diameter; more than zero
 * @param voidage share of the bed that is free; 0.3 to 0.5; dimensionless
 */
public record PackedBed(Length depth, Length beadSize, double voidage) implements Parts {
  /** Share of a settled bed that may be free: 0.3 to 0.5; dimensionless. */
  public static final Bounds<Double> VOIDAGE = Bounds.of(0.3, 0.5);

  /** Densest voidage reckoned with. */
  public static final double DENSE = 0.36;

  /** Highest Reynolds number that the formula was made for; dimensionless. */
  public static final double HIGHEST_REYNOLDS = 2300;

  /** Loosest voidage reckoned with. */
  public static final double LOOSE = 0.40;

  /**
   * @param depth more than zero
   * @param beadSize mean bead diameter
   * @param voidage share of the bed that is free
   * @throws IllegalArgumentException outside the ranges above
   */
  public PackedBed {
    Require.positive("bed depth", depth);
    Require.positive("bead size", beadSize);
    VOIDAGE.require("voidage", voidage);
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.of(depth), Figure.of(1 - voidage), Figure.of(voidage), Figure.of(beadSize));
  }

  /**
   * {@return the pressure loss: L (150 μ v (1−e)² ÷ (e³ d²) + 1.75 ρ v² (1−e) ÷ (e³ d))} Example:
   * 0.8 mm beads, voidage 0.4, 1 mm/s of water (1,000 kg/m3, 1 mPa s), 1 m → 1,338.9 Pa. Valid for
   * Reynolds numbers {@link #reynolds} of 1 to 2300; below, the first term alone counts, so the
   * formula still holds. Source: Ergun, Chem. Eng. Progress 48 (1952) 89.
   *
   * @param velocity zero or more
   * @param fluid density and viscosity of the liquid or gas
   * @throws IllegalArgumentException when the velocity is negative
   */
  public Pressure loss(FlowVelocity velocity, Fluid fluid) {
    Require.notNegative("velocity", velocity);
    double v = velocity.metresPerSecond();
    double d = beadSize.metres();
    double solid = 1 - voidage;
    double free = voidage * voidage * voidage;
    double viscous = 150 * fluid.pascalSeconds() * v * solid * solid / (free * d * d);
    double inertial = 1.75 * fluid.kilogramsPerCubicMetre() * v * v * solid / (free * d);
    return Pressure.ofPascals(depth.metres() * (viscous + inertial));
  }

  /**
   * {@return the Reynolds number ρ v d ÷ (μ (1−e)); dimensionless} Example: 0.8 mm beads, voidage
   * 0.4, 1 mm/s of water (1,000 kg/m3, 1 mPa s) → 1.333. Source: Ergun, Chem. Eng. Progress 48
   * (1952) 89.
   *
   * @param velocity flow through a unit of the empty cross-section
   * @param fluid density and viscosity of the liquid or gas
   */
  public double reynolds(FlowVelocity velocity, Fluid fluid) {
    return fluid.reynolds(velocity, beadSize) / (1 - voidage);
  }

  /**
   * {@return the loss at which the flow carries the bed: g L (1−e) (ρb − ρ)} Example: 1.724 m,
   * voidage 0.42, beads of 1,000 in a gas of 2.374 kg/m3 → 9,783 Pa. Source: Geankoplis, Transport
   * Processes and Unit Operations, example 3.1-6.
   *
   * @param bead heavier than the fluid
   * @param fluid density and viscosity of the liquid or gas
   * @throws IllegalArgumentException when the bead is not heavier than the fluid
   */
  public Pressure liftingLoss(Density bead, Fluid fluid) {
    Require.positive("bead density less that of the fluid", bead.minus(fluid.density()));
    double heavier = bead.kilogramsPerCubicMetre() - fluid.kilogramsPerCubicMetre();
    return Pressure.ofPascals(Fluid.GRAVITY * depth.metres() * (1 - voidage) * heavier);
  }
}

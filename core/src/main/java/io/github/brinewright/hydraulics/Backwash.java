package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.softener.Resin;

/**
 * The backwash that lifts a bed by a chosen share of its depth.
 *
 * <p>Velocity = terminal velocity × voidage^n, with the voidage of the expanded bed 1 − 0.62 ÷ (1 +
 * expansion). Example: 0.60 mm beads of 1,280 kg/m3, 50 % at 50 °F → 5.14 gpm/ft2. Colder water
 * needs less flow. Source: Richardson and Zaki, Trans. IChemE 32 (1954) 35.
 */
public final class Backwash {
  /** Settled voidage. */
  private static final double SETTLED = 0.38;

  /** Share of its depth by which a bed may be lifted: 0 to 1; dimensionless. */
  public static final Bounds<Double> EXPANSION = Bounds.of(0.0, 1.0);

  /** Share of a bed that is free: 0 to 0.99; dimensionless. */
  public static final Bounds<Double> VOIDAGE = Bounds.of(0.0, 0.99);

  /** Half the bed depth again: the usual expansion. */
  public static final double USUAL_EXPANSION = 0.5;

  private final double expansion;
  private final FlowVelocity terminal;
  private final double reynolds;

  /**
   * @param resin its bead size and density
   * @param water 0 to 60 °C
   * @param expansion 0 to 1; dimensionless
   * @throws IllegalArgumentException outside the ranges above
   */
  public Backwash(Resin resin, Temperature water, double expansion) {
    this.expansion = EXPANSION.require("bed expansion", expansion);
    Fluid fluid = Fluid.water(water);
    terminal = BeadSettling.terminal(resin.beadSize(), resin.beadDensity(), fluid);
    reynolds = fluid.reynolds(terminal, resin.beadSize());
  }

  /** {@return the flow that expands the bed so far} */
  public FlowVelocity velocity() {
    return terminal.times(Math.pow(voidage(), exponent()));
  }

  /** {@return the terminal velocity of a single bead} */
  public FlowVelocity terminal() {
    return terminal;
  }

  /** {@return the share of the expanded bed that is free; dimensionless} */
  public double voidage() {
    return 1 - (1 - SETTLED) / (1 + expansion);
  }

  /** {@return the exponent of the voidage; dimensionless} */
  public double exponent() {
    return BeadSettling.exponent(reynolds);
  }

  /**
   * {@return the depth of a bed whose voidage has changed: depth × (1 − before) ÷ (1 − after)}
   * Example: 0.475 m from 0.3498 to 0.460 → 0.572 m. Source: the beads keep their volume.
   *
   * @param depth before; more than zero
   * @param before voidage before, 0 to 0.99; dimensionless
   * @param after voidage after, 0 to 0.99; dimensionless
   * @throws IllegalArgumentException outside these ranges
   */
  public static Length depthAfter(Length depth, double before, double after) {
    Require.positive("bed depth", depth);
    VOIDAGE.require("voidage before", before);
    VOIDAGE.require("voidage after", after);
    return depth.times((1 - before) / (1 - after));
  }
}

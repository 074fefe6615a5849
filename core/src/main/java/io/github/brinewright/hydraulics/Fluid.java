package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Parts;
import java.util.List;

/**
 * What flows through a bed.
 *
 * @param density more than zero
 * @param viscosity more than zero
 */
public record Fluid(Density density, Viscosity viscosity) implements Parts {
  /** Standard gravity in m/s2. Source: CGPM 1901, exact. */
  static final double GRAVITY = 9.80665;

  /**
   * @param density more than zero
   * @param viscosity more than zero
   * @throws IllegalArgumentException when density or viscosity is not more than zero
   */
  public Fluid {
    Require.positive("density", density);
    Require.positive("viscosity", viscosity);
  }

  @Override
  public List<Figure> figures() {
    return List.of(Figure.of(density), Figure.of(viscosity));
  }

  /**
   * {@return water at a temperature}
   *
   * @param temperature 0 to 60 °C
   * @throws IllegalArgumentException outside that range
   */
  public static Fluid water(Temperature temperature) {
    return new Fluid(WaterProperties.density(temperature), WaterProperties.viscosity(temperature));
  }

  /** Reynolds number ρ v d ÷ μ of a flow past something of the given size; dimensionless. */
  double reynolds(FlowVelocity velocity, Length size) {
    return kilogramsPerCubicMetre() * velocity.metresPerSecond() * size.metres() / pascalSeconds();
  }

  double kilogramsPerCubicMetre() {
    return density.kilogramsPerCubicMetre();
  }

  double pascalSeconds() {
    return viscosity.millipascalSeconds() / 1000;
  }
}

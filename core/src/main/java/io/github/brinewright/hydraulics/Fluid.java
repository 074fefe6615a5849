package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;

/**
 * What flows through a bed.
 *
 * @param density more than zero
 * @param viscosity more than zero
 */
public record Fluid(Density density, Viscosity viscosity) {
  /**
   * Water at a temperature.
   *
   * @param temperature 0 to 60 °C
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

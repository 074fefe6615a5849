package io.github.brinewright.hydraulics;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;

/** Density and viscosity of air-free water at one atmosphere, 0 to 60 °C. */
public final class WaterProperties {
  /** Temperatures that the formulas hold for: 0 to 60 °C. */
  public static final Bounds<Temperature> TEMPERATURE =
      Bounds.of(Temperature.ofCelsius(0), Temperature.ofCelsius(60));

  private static final double VISCOSITY_AT_20 = 1.0020;

  private WaterProperties() {}

  /**
   * {@return the density by a rational function} Source: Kell (J. Chem. Eng. Data 20, 1975, 97),
   * from memory. Example: 20 °C → 998.20 kg/m3.
   *
   * @param temperature 0 to 60 °C
   * @throws IllegalArgumentException outside that range
   */
  public static Density density(Temperature temperature) {
    double t = checked(temperature);
    double numerator =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return Density.ofKilogramsPerCubicMetre(numerator / (1 + 16.879850e-3 * t));
  }

  /**
   * {@return the viscosity by log10(η/η20) = (1.1709 (20 − t) − 0.001827 (t − 20)²) ÷ (t + 89.93),
   * η20 = 1.0020 mPa s} Source: Korson, Drost-Hansen and Millero (J. Phys. Chem. 73, 1969, 34).
   * Example: 10 °C → 1.307 mPa s.
   *
   * @param temperature 0 to 60 °C
   * @throws IllegalArgumentException outside that range
   */
  public static Viscosity viscosity(Temperature temperature) {
    double t = checked(temperature);
    double exponent = (1.1709 * (20 - t) - 0.001827 * (t - 20) * (t - 20)) / (t + 89.93);
    return Viscosity.ofMillipascalSeconds(VISCOSITY_AT_20 * Math.pow(10, exponent));
  }

  private static double checked(Temperature temperature) {
    return TEMPERATURE.require("water temperature", temperature).celsius();
  }
}

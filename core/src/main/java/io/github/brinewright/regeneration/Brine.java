package io.github.brinewright.regeneration;

import io.github.brinewright.hydraulics.WaterProperties;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** Sodium chloride brine by the handbook, where the everyday figure of 3 lb/gal is too round. */
public final class Brine {
  /** Temperatures that the tables of saturated brine answer for: 0 to 51.67 °C. */
  public static final Bounds<Temperature> TEMPERATURE =
      Bounds.of(Temperature.ofCelsius(0), Temperature.ofCelsius(51.67));

  /** Shares of salt in brine, by mass: 0 to 0.27; dimensionless. */
  public static final Bounds<Double> SHARE = Bounds.of(0.0, 0.27);

  private static final double[] CELSIUS = {0, 10, 15.56, 21.11, 26.67, 37.78, 51.67};
  private static final double[] SATURATED_PERCENT = {
    26.29, 26.36, 26.395, 26.45, 26.52, 26.68, 26.92
  };
  private static final PolynomialSplineFunction SATURATION =
      new LinearInterpolator().interpolate(CELSIUS, SATURATED_PERCENT);

  private Brine() {}

  /**
   * {@return the share of salt in saturated brine, by mass} Example: 60 °F → 0.26395. Source: Salt
   * Institute.
   *
   * @param temperature 0 to 51.67 °C
   * @throws IllegalArgumentException outside that range
   */
  public static double saturation(Temperature temperature) {
    return SATURATION.value(TEMPERATURE.require("brine temperature", temperature).celsius()) / 100;
  }

  /**
   * {@return the density of brine: that of water × (1 + w (0.71073 + 0.1183 w + 0.374 w²)), which
   * passes through 1,070.7, 1,147.8 and 1,197.2 kg/m3 at 10, 20 and 26 % and 20 °C} Example: 20 %
   * at 20 °C → 1,147.8 kg/m3. Source of these three: Poradnik fizykochemiczny, 1974.
   *
   * @param share of salt by mass; 0 to 0.27; dimensionless
   * @param temperature 0 to 51.67 °C
   * @throws IllegalArgumentException outside these ranges
   */
  public static Density density(double share, Temperature temperature) {
    TEMPERATURE.require("brine temperature", temperature);
    double w = SHARE.require("share of salt", share);
    double times = 1 + w * (0.71073 + w * (0.1183 + w * 0.374));
    return WaterProperties.density(temperature).times(times);
  }

  /**
   * {@return the salt that a volume of water takes up until it is saturated} Example: 1 gal at 60
   * °F → 2.99 lb. Source: {@link #saturation}.
   *
   * @param water zero or more
   * @param temperature 0 to 51.67 °C
   * @throws IllegalArgumentException outside these ranges
   */
  public static Mass saltToSaturate(Volume water, Temperature temperature) {
    Require.notNegative("volume of water", water);
    double share = saturation(temperature);
    return massOf(water, WaterProperties.density(temperature)).times(share / (1 - share));
  }

  /**
   * {@return the volume of the saturated brine that a volume of water makes} Example: 1 gal at 60
   * °F → 1.13 gal. Source: {@link #saturation} and {@link #density}.
   *
   * @param water zero or more
   * @param temperature 0 to 51.67 °C
   * @throws IllegalArgumentException outside these ranges
   */
  public static Volume saturatedFrom(Volume water, Temperature temperature) {
    Require.notNegative("volume of water", water);
    double share = saturation(temperature);
    Density dense = density(share, temperature);
    double ratio = WaterProperties.density(temperature).ratioTo(dense) / (1 - share);
    return water.times(ratio);
  }

  private static Mass massOf(Volume volume, Density density) {
    return Mass.ofKilograms(volume.cubicMetres() * density.kilogramsPerCubicMetre());
  }
}

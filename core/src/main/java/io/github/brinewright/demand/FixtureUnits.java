package io.github.brinewright.demand;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Require;
import java.util.Map;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Peak flow by water supply fixture units, for systems of flush tanks: the table of the code,
 * joined by straight lines.
 */
public final class FixtureUnits {
  /** Lowest number of fixture units the table answers for. */
  public static final double LOWEST = 1;

  /** Highest number of fixture units the table answers for. */
  public static final double HIGHEST = 200;

  private static final double[] UNITS = {
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 14, 15, 16, 18, 19, 20, 25, 30, 40, 45, 50, 70, 80, 100,
    120, 160, 180, 200
  };
  private static final double[] GPM = {
    3, 5, 6.5, 8, 9.4, 10.7, 11.8, 12.8, 13.7, 14.6, 15.4, 16.5, 17, 17.5, 18, 18.8, 19.2, 19.6,
    21.5, 23.3, 26.3, 27.7, 29.1, 35, 38, 43.5, 48, 57, 61, 65
  };
  private static final PolynomialSplineFunction TABLE =
      new LinearInterpolator().interpolate(UNITS, GPM);

  private FixtureUnits() {}

  /**
   * The flow for a number of fixture units. Example: 10 → 14.6 gpm. Source: International Plumbing
   * Code, appendix E, table E103.3(3), systems predominantly with flush tanks.
   *
   * @param units 1 to 200; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public static FlowRate flow(double units) {
    return FlowRate.ofGallonsPerMinute(
        TABLE.value(Require.between("fixture units", units, LOWEST, HIGHEST)));
  }

  /** The rows of the table on either side: units and gpm below, units and gpm above. */
  static double[] rowsAround(double units) {
    int above = 1;
    while (UNITS[above] < units) {
      above++;
    }
    return new double[] {UNITS[above - 1], GPM[above - 1], UNITS[above], GPM[above]};
  }

  /**
   * The fixture units of a list of fixtures; dimensionless. Example: 2 showers and a lavatory →
   * 3.5. Source: {@link Fixture}.
   */
  public static double of(Map<Fixture, Integer> fixtures) {
    return fixtures.entrySet().stream()
        .mapToDouble(entry -> entry.getKey().units() * entry.getValue())
        .sum();
  }
}

package io.github.brinewright.demand;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Parts;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import java.util.Map;

/**
 * Peak flow by water supply fixture units, for systems of flush tanks: the table of the code,
 * joined by straight lines.
 */
public final class FixtureUnits {
  /** Fixture units that the table answers for: 1 to 200; dimensionless. */
  public static final Bounds<Double> UNITS = Bounds.of(1.0, 200.0);

  private static final double[] ROWS = {
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45, 50,
    60, 70, 80, 90, 100, 120, 140, 160, 180, 200
  };
  private static final double[] GPM = {
    3, 5, 6.5, 8, 9.4, 10.7, 11.8, 12.8, 13.7, 14.6, 15.4, 16, 16.5, 17, 17.5, 18, 18.4, 18.8, 19.2,
    19.6, 21.5, 23.3, 24.9, 26.3, 27.7, 29.1, 32, 35, 38, 41, 43.5, 48, 52.5, 57, 61, 65
  };

  /** Two rows of the table and what lies between them. */
  private record Between(double lowUnits, double lowGpm, double highUnits, double highGpm)
      implements Parts {
    FlowRate flow(double units) {
      double slope = (highGpm - lowGpm) / (highUnits - lowUnits);
      return FlowRate.ofGallonsPerMinute(lowGpm + slope * (units - lowUnits));
    }

    @Override
    public List<Figure> figures() {
      return List.of(
          Figure.of(lowGpm), Figure.of(highGpm), Figure.of(lowUnits), Figure.of(highUnits));
    }
  }

  private FixtureUnits() {}

  /**
   * {@return the flow for a number of fixture units} Example: 10 → 14.6 gpm. Source: International
   * Plumbing Code, appendix E, table E103.3(3), systems predominantly with flush tanks.
   *
   * @param units 1 to 200; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public static FlowRate flow(double units) {
    return worked(UNITS.require("fixture units", units)).value();
  }

  /** The flow for a number of fixture units, and how it was found. */
  static Worked<FlowRate> worked(double units) {
    return worked(StepKind.PEAK_BY_FIXTURES, units);
  }

  /** The same as a step of another kind. */
  static Worked<FlowRate> worked(StepKind kind, double units) {
    return Worked.of(kind, Sources.FIXTURE_UNITS, around(units), units, Between::flow);
  }

  private static Between around(double units) {
    int above = 1;
    while (ROWS[above] < units) {
      above++;
    }
    return new Between(ROWS[above - 1], GPM[above - 1], ROWS[above], GPM[above]);
  }

  /**
   * {@return the fixture units of a list of fixtures; dimensionless} Example: 2 showers and a
   * lavatory → 3.5. Source: {@link Fixture}.
   *
   * @param fixtures kinds with their numbers
   */
  public static double of(Map<Fixture, Integer> fixtures) {
    return fixtures.entrySet().stream()
        .mapToDouble(entry -> entry.getKey().units() * entry.getValue())
        .sum();
  }
}

package io.github.brinewright.demand;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;
import java.util.Map;

/**
 * The flow that a home may draw at its busiest moment.
 *
 * <p>With a list of fixtures: their fixture units and the table of the code ({@link FixtureUnits});
 * outside the table its nearest end stands, and {@link #withinTable()} says so. Without one: 3 gpm
 * for kitchen and laundry and 3 gpm for each bathroom, common practice. Example: 2 bathrooms → 9
 * gpm. Local code decides.
 */
public final class PeakFlow implements Explained {
  private static final FlowRate KITCHEN_AND_LAUNDRY = FlowRate.ofGallonsPerMinute(3);
  private static final FlowRate EACH_BATHROOM = FlowRate.ofGallonsPerMinute(3);

  private final double bathrooms;
  private final Map<Fixture, Integer> fixtures;

  /** The peak flow of a household. */
  public PeakFlow(Household household) {
    bathrooms = household.bathrooms();
    fixtures = household.fixtures();
  }

  /** Whether it rests on a list of fixtures. */
  public boolean byFixtures() {
    return !fixtures.isEmpty();
  }

  /** Fixture units of the list; dimensionless. */
  public double fixtureUnits() {
    return FixtureUnits.of(fixtures);
  }

  /** Whether the fixture units lie within the code's table; true without a list. */
  public boolean withinTable() {
    return !byFixtures() || fixtureUnits() == withinEnds();
  }

  private double withinEnds() {
    return Math.max(FixtureUnits.LOWEST, Math.min(FixtureUnits.HIGHEST, fixtureUnits()));
  }

  /** The peak flow. */
  public FlowRate value() {
    return byFixtures()
        ? FixtureUnits.flow(withinEnds())
        : KITCHEN_AND_LAUNDRY.plus(EACH_BATHROOM.times(bathrooms));
  }

  @Override
  public List<Step> steps() {
    if (byFixtures()) {
      double[] rows = FixtureUnits.rowsAround(withinEnds());
      return List.of(
          new Step(
              StepKind.PEAK_BY_FIXTURES,
              List.of(
                  Figure.of(rows[1], 1),
                  Figure.of(rows[3], 1),
                  Figure.of(withinEnds(), 1),
                  Figure.of(rows[0], 0),
                  Figure.of(rows[2], 0)),
              Figure.of(value()),
              Sources.FIXTURE_UNITS));
    }
    return List.of(
        new Step(
            StepKind.PEAK_BY_BATHROOMS,
            List.of(
                Figure.of(KITCHEN_AND_LAUNDRY), Figure.of(EACH_BATHROOM), Figure.of(bathrooms, 1)),
            Figure.of(value()),
            Sources.PEAK_BY_BATHROOMS));
  }
}

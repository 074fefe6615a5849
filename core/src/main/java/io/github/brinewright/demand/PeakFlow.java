package io.github.brinewright.demand;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
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

  private final Map<Fixture, Integer> fixtures;
  private final Worked<FlowRate> worked;

  /** The peak flow of a household. */
  public PeakFlow(Household household) {
    fixtures = household.fixtures();
    worked =
        byFixtures()
            ? FixtureUnits.worked(FixtureUnits.UNITS.nearest(fixtureUnits()))
            : Worked.of(
                StepKind.PEAK_BY_BATHROOMS,
                Sources.PEAK_BY_BATHROOMS,
                KITCHEN_AND_LAUNDRY,
                EACH_BATHROOM,
                household.bathrooms(),
                (kitchen, bathroom, number) -> kitchen.plus(bathroom.times(number)));
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
    return !byFixtures() || FixtureUnits.UNITS.holds(fixtureUnits());
  }

  /** The peak flow. */
  public FlowRate value() {
    return worked.value();
  }

  @Override
  public List<Step> steps() {
    return worked.steps();
  }
}

package io.github.brinewright.demand;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The flow that a home may draw at its busiest moment.
 *
 * <p>Measured at the visit; or with a list of fixtures their fixture units and the table of the
 * code ({@link FixtureUnits}), where outside the table its nearest end stands and {@link
 * #withinTable()} says so; or else 3 gpm for kitchen and laundry and 3 gpm for each bathroom,
 * common practice. Example: 2 bathrooms → 9 gpm. Local code decides. The methods disagree by half
 * of the flow, so {@link #range()} tells what the others say.
 *
 * <p>Of hot water alone three quarters pass the bed: the code counts three quarters of the fixture
 * units for a separate hot line (from memory). A bypass that blends takes its share besides.
 */
public final class PeakFlow implements Explained {
  /** What each bathroom may draw by the rule of thumb: 3 gpm, common practice. */
  public static final FlowRate EACH_BATHROOM = FlowRate.ofGallonsPerMinute(3);

  private static final FlowRate KITCHEN_AND_LAUNDRY = FlowRate.ofGallonsPerMinute(3);
  private static final double HOT_SHARE = 0.75;

  private final Map<Fixture, Integer> fixtures;
  private final boolean hotOnly;
  private final double blend;
  private final Map<PeakMethod, Worked<FlowRate>> known = new EnumMap<>(PeakMethod.class);
  private final PeakMethod method;
  private final Worked<FlowRate> softened;
  private final Worked<FlowRate> throughBed;

  /**
   * The peak flow of a household.
   *
   * @param blend share of the softened water that passes the bed, above 0 to 1; dimensionless
   */
  PeakFlow(Household household, double blend) {
    fixtures = household.fixtures();
    hotOnly = household.softened() == SoftenedShare.HOT_WATER;
    this.blend = blend;
    household.peakFlow().ifPresent(flow -> known.put(PeakMethod.MEASURED, measured(flow)));
    if (!fixtures.isEmpty()) {
      known.put(PeakMethod.FIXTURE_UNITS, byFixtures(fixtureUnits()));
    }
    known.put(PeakMethod.BATHROOMS, byBathrooms(household.bathrooms()));
    method = known.keySet().iterator().next();
    softened = hotOnly ? hot() : worked();
    throughBed =
        Worked.of(
            StepKind.PEAK_THROUGH_BED,
            Sources.DEFINITION,
            softened.value(),
            blend,
            (flow, share) -> flow.times(share));
  }

  /**
   * The peak flow of a household whose water is not blended.
   *
   * @param household who lives in the home, and what is known of their use
   */
  public PeakFlow(Household household) {
    this(household, 1);
  }

  private static Worked<FlowRate> measured(FlowRate flow) {
    return Worked.of(StepKind.PEAK_MEASURED, Sources.HOME, flow, Function.identity());
  }

  private static Worked<FlowRate> byFixtures(double units) {
    return FixtureUnits.worked(FixtureUnits.UNITS.nearest(units));
  }

  private static Worked<FlowRate> byBathrooms(double bathrooms) {
    return Worked.of(
        StepKind.PEAK_BY_BATHROOMS,
        Sources.PEAK_BY_BATHROOMS,
        KITCHEN_AND_LAUNDRY,
        EACH_BATHROOM,
        bathrooms,
        (kitchen, bathroom, number) -> kitchen.plus(bathroom.times(number)));
  }

  private Worked<FlowRate> hot() {
    return method == PeakMethod.FIXTURE_UNITS
        ? FixtureUnits.worked(
            StepKind.PEAK_OF_HOT_FIXTURES, FixtureUnits.UNITS.nearest(HOT_SHARE * fixtureUnits()))
        : Worked.of(
            StepKind.PEAK_OF_HOT_WATER,
            Sources.HOT_PEAK,
            HOT_SHARE,
            value(),
            (share, flow) -> flow.times(share));
  }

  private Worked<FlowRate> worked() {
    return Objects.requireNonNull(known.get(method));
  }

  /** {@return how {@link #value()} was found} */
  public PeakMethod method() {
    return method;
  }

  /** {@return whether it rests on a list of fixtures} */
  public boolean byFixtures() {
    return method == PeakMethod.FIXTURE_UNITS;
  }

  /** {@return the fixture units of the list; dimensionless} */
  public double fixtureUnits() {
    return FixtureUnits.of(fixtures);
  }

  /** {@return whether the fixture units lie within the code's table; true without a list} */
  public boolean withinTable() {
    return !byFixtures() || FixtureUnits.UNITS.holds(fixtureUnits());
  }

  /** {@return the peak flow of the home} */
  public FlowRate value() {
    return worked().value();
  }

  /** {@return the part of it that passes the bed} */
  public FlowRate throughBed() {
    return throughBed.value();
  }

  /** {@return what each method that can be used says, the most trusted first} */
  public Map<PeakMethod, FlowRate> byMethod() {
    Map<PeakMethod, FlowRate> flows = new EnumMap<>(PeakMethod.class);
    known.forEach((each, worked) -> flows.put(each, worked.value()));
    return Collections.unmodifiableMap(flows);
  }

  /** {@return the least and the most that the methods say; empty where only one can be used} */
  public Optional<Range<FlowRate>> range() {
    List<FlowRate> flows = byMethod().values().stream().sorted().toList();
    return flows.size() < 2
        ? Optional.empty()
        : Optional.of(new Range<>(flows.get(0), flows.get(flows.size() - 1)));
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(worked().steps());
    if (hotOnly) {
      steps.add(softened.step());
    }
    if (blend < 1) {
      steps.add(throughBed.step());
    }
    return steps;
  }
}

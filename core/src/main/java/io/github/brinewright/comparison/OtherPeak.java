package io.github.brinewright.comparison;

import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.demand.PeakFlow;
import io.github.brinewright.demand.PeakMethod;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.sizing.Design;

/**
 * The peak flow as another way of the trade has it. A measured peak and one from fixtures stand
 * alone. A rule of thumb does not: it is told with and without 3 gpm for kitchen and laundry beside
 * the 3 gpm of each bathroom, and in 60 homes that were measured indoor peaks rarely passed 10 gpm,
 * for seconds. Source: common practice; field data of a trade magazine on Wisconsin.
 */
final class OtherPeak {
  private static final FlowRate RARELY_PASSED = FlowRate.ofGallonsPerMinute(10);

  private OtherPeak() {}

  /** The other reading of the flow through one bed; that flow itself where there is none. */
  static FlowRate of(Design design) {
    PeakFlow home = design.home().peak();
    FlowRate throughBed = design.flow().peak();
    if (home.method() != PeakMethod.BATHROOMS) {
      return throughBed;
    }
    FlowRate other = otherReading(design.home().site().household());
    return throughBed.times(Math.min(1, other.ratioTo(home.value())));
  }

  private static FlowRate otherReading(Household household) {
    FlowRate bathrooms = PeakFlow.EACH_BATHROOM.times(household.bathrooms());
    return household.people() > DailyUse.LARGEST_HOUSEHOLD
        ? bathrooms
        : bathrooms.min(RARELY_PASSED);
  }
}

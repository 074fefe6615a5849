package io.github.brinewright.comparison;

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
  private static final FlowRate EACH_BATHROOM = FlowRate.ofGallonsPerMinute(3);
  private static final FlowRate RARELY_PASSED = FlowRate.ofGallonsPerMinute(10);
  private static final int LARGEST_HOUSEHOLD = 8;

  private OtherPeak() {}

  static FlowRate of(Design design) {
    Household household = design.home().site().household();
    FlowRate peak = design.flow().peak();
    if (!byBathrooms(design)) {
      return peak;
    }
    FlowRate bathrooms = EACH_BATHROOM.times(household.bathrooms());
    FlowRate field =
        household.people() > LARGEST_HOUSEHOLD ? bathrooms : bathrooms.min(RARELY_PASSED);
    return peak.min(field);
  }

  private static boolean byBathrooms(Design design) {
    return !design.home().peak().byFixtures()
        && design.home().site().household().peakFlow().isEmpty();
  }
}

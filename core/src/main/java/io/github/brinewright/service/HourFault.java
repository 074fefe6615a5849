package io.github.brinewright.service;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** Whether it regenerates at an hour at which people use water. */
final class HourFault {
  private static final int LATEST_QUIET_HOUR = 4;
  private static final double MUCH_MORE = 1.5;
  private static final int YEARS = 50;

  private final HomeLoad home;
  private final ServiceOption asFound;

  HourFault(HomeLoad home, ServiceOption asFound) {
    this.home = home;
    this.asFound = asFound;
  }

  Optional<Fault> fault() {
    BedSettings bed = asFound.bed();
    if (bed.control() == Control.METERED_AT_ONCE || bed.hour() <= LATEST_QUIET_HOUR) {
      return Optional.empty();
    }
    Volume now = asFound.hardWater().whileRegenerating();
    Volume atNight = atNight(bed);
    return Optional.of(
            Fault.of(
                FaultKind.HOUR_IN_USE,
                Figure.of(LocalTime.of(bed.hour(), 0)),
                Figure.roughly(now),
                Figure.roughly(atNight)))
        .filter(fault -> now.exceeds(atNight.times(MUCH_MORE)));
  }

  private Volume atNight(BedSettings bed) {
    return new YearSimulation(DemandModel.of(home), YEARS, YearSimulation.USUAL_SEED)
        .run(List.of(bed.withHour(BedSettings.USUAL_HOUR)))
        .get(0)
        .hardWater()
        .whileRegenerating();
  }
}

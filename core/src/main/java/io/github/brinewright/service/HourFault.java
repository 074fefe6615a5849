package io.github.brinewright.service;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.Optional;

/** Whether it regenerates while people use water. */
final class HourFault {
  /**
   * Share of a day's use that a regeneration may meet: the hours from 1 to 5 a.m. carry 2.7 % of it
   * by open meter data, and a regeneration takes less than two hours.
   */
  private static final double MOST_OF_A_DAY = 0.03;

  private final Inspected inspected;
  private final HomeYears years;

  HourFault(Inspected inspected, HomeYears years) {
    this.inspected = inspected;
    this.years = years;
  }

  Optional<Fault> fault() {
    BedSettings bed = inspected.asFound().bed();
    boolean ofItsOwn = bed.control() == Control.METERED_AT_ONCE;
    if (ofItsOwn || bed.hour() == BedSettings.USUAL_HOUR || metEachTime() <= MOST_OF_A_DAY) {
      return Optional.empty();
    }
    return Optional.of(
        Fault.of(
            FaultKind.HOUR_IN_USE,
            Figure.of(LocalTime.of(bed.hour(), 0)),
            Figure.roughly(inspected.asFound().hardWater().whileRegenerating()),
            Figure.roughly(atUsualHour(bed))));
  }

  /** Share of a mean day's use that a regeneration meets. */
  private double metEachTime() {
    ServiceOption found = inspected.asFound();
    Volume day = inspected.home().softenedYear().dividedBy(365);
    double each = found.hardWater().whileRegenerating().ratioTo(day);
    return each / found.years().regenerations().mean();
  }

  private Volume atUsualHour(BedSettings bed) {
    return years.of(bed.withHour(BedSettings.USUAL_HOUR)).hardWater().whileRegenerating();
  }
}

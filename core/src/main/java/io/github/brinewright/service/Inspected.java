package io.github.brinewright.service;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import java.util.Map;
import java.util.Optional;

/**
 * A softener as found beside its right setting: what every fault is judged by.
 *
 * @param comparison of the home
 * @param found the softener
 * @param options the ways to go on
 */
record Inspected(Comparison comparison, FoundSoftener found, Map<Kind, ServiceOption> options) {
  private static final double CLEARLY_MORE = 1.25;

  HomeLoad home() {
    return comparison.home();
  }

  Margins margins() {
    return comparison.priceList().margins();
  }

  Hardness hardness() {
    return home().compensatedHardness();
  }

  ServiceOption asFound() {
    return options.get(Kind.AS_FOUND);
  }

  Optional<ServiceOption> right() {
    return Optional.ofNullable(options.get(Kind.SET_RIGHT));
  }

  /** Soft water that the bed holds between two regenerations. */
  Volume holds() {
    return found.usable().asWaterOf(hardness());
  }

  /** What the meter as found leaves in the bed when it starts; below zero where that is empty. */
  private Volume reserve() {
    return holds().minus(found.startsAfter().orElseThrow());
  }

  /** What it should leave; nothing where no setting serves the home. */
  Volume rightReserve() {
    return right()
        .map(ServiceOption::bed)
        .map(Inspected::reserve)
        .orElseGet(() -> Volume.ofGallons(0));
  }

  private static Volume reserve(BedSettings bed) {
    return bed.capacity().minus(bed.set());
  }

  /** Whether the meter starts later than it should. */
  boolean shortOfReserve() {
    return rightReserve().exceeds(reserve());
  }

  /** Whether the meter starts clearly sooner than it should. */
  boolean reserveTooLarge() {
    return right().isPresent() && reserve().exceeds(rightReserve().times(CLEARLY_MORE));
  }

  /** Whether more hard water passes an empty bed than the dealer's margin leaves to all causes. */
  boolean runsOut() {
    Volume most = home().softenedYear().times(margins().hardWaterMean());
    return asFound().hardWater().runOut().exceeds(most);
  }
}

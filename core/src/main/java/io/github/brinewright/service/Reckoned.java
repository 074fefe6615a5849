package io.github.brinewright.service;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.sizing.FoundSoftener;
import java.util.Optional;

/**
 * The capacity that a setting reckons with: days × load of a day, from the days as set up to one
 * more, since days are rounded down; volume × hardness, with iron and without; or the capacity that
 * the control was told.
 */
final class Reckoned {
  private final FoundSoftener found;
  private final HomeLoad home;
  private final Range<HardnessAmount> range;

  Reckoned(FoundSoftener found, HomeLoad home) {
    this.found = found;
    this.home = home;
    range = range(found.present().control());
  }

  private Range<HardnessAmount> range(PresentControl control) {
    if (control instanceof ByVolume volume) {
      return range(volume.set());
    } else if (control instanceof ByHardness told) {
      HardnessAmount capacity =
          told.capacity().orElseGet(() -> told.hardness().in(found.setVolume().orElseThrow()));
      return new Range<>(capacity, capacity);
    }
    int days = days().orElseThrow();
    return new Range<>(home.dailyLoad().times(days), home.dailyLoad().times(days + 1));
  }

  private Range<HardnessAmount> range(Volume volume) {
    return new Range<>(
        home.site().softenedWater().hardness().in(volume), home.compensatedHardness().in(volume));
  }

  /** Days of a clock, or the longest gap of weekdays. */
  Optional<Integer> days() {
    PresentControl control = found.present().control();
    if (control instanceof PresentControl.Clock clock) {
      return Optional.of(clock.days());
    } else if (control instanceof PresentControl.Weekdays weekdays) {
      return Optional.of(new WeekdayClock(weekdays.days()).longestGap());
    }
    return Optional.empty();
  }

  /** What the bed must hold for the setting: the lower end of a clock, the upper of a meter. */
  HardnessAmount needed() {
    return days().isPresent() ? range.low() : range.high();
  }

  /** Whether the setting may have been made from a capacity, within a tenth. */
  boolean madeFrom(HardnessAmount capacity) {
    return range.low().compareTo(capacity.times(1.1)) <= 0
        && range.high().compareTo(capacity.times(0.9)) >= 0;
  }
}

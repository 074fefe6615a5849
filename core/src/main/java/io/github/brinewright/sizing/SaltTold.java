package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;

/**
 * The use of a home by the salt that is bought for a softener with a meter: regenerations = salt of
 * a year ÷ salt of each; through the bed of a year = regenerations × (volume that starts one + what
 * passes until the night).
 */
final class SaltTold {
  /** Bags are whole, and not all of them are used in the year in which they are bought. */
  static final double DEVIATION = 0.20;

  /** More often than by its longest interval alone. */
  private static final double OFTENER = 1.1;

  private final FoundSoftener found;
  private final double share;
  private final double regenerationsADay;

  SaltTold(FoundSoftener found, HomeLoad before) {
    this.found = found;
    share = before.softenedShare();
    Mass ofYear = found.present().saltBought().orElseThrow();
    regenerationsADay = ofYear.ratioTo(found.saltPerRegeneration()) / CalendarYear.DAYS;
  }

  /** Whether the salt of a year may tell the use: a meter whose volume and salt were found. */
  static boolean tells(PresentSoftener present) {
    return volumeFound(present.control())
        && present.salt().isPresent()
        && present.saltBought().filter(Mass::isPositive).isPresent();
  }

  private static boolean volumeFound(PresentControl control) {
    return control instanceof PresentControl.ByVolume
        || control instanceof PresentControl.ByHardness told && told.capacity().isPresent();
  }

  /** Whether the volume starts its regenerations, and not its longest interval. */
  boolean counts() {
    return found.startsAfter().filter(Volume::isPositive).isPresent()
        && regenerationsADay <= 1
        && regenerationsADay > OFTENER / found.longestDays();
  }

  /** Use of the home in a year. */
  Volume useOfYear() {
    Volume starts = found.startsAfter().orElseThrow();
    double waits = 1 - regenerationsADay * found.daysUntilNight();
    return starts.times(regenerationsADay * CalendarYear.DAYS / (waits * share));
  }
}

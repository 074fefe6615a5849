package io.github.brinewright.service;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.RatedCapacityBasis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The capacity that a setting reckons with, and whether it is the rating. By hand days are capacity
 * ÷ load of a day, rounded down or off, and a volume is capacity ÷ hardness, maybe less a day; the
 * load is that of the day to size on, or people × allowance × hardness with iron or without, or the
 * bill's. Source: common practice.
 */
final class Reckoned {
  private static final int WEEK = 7;
  private static final double ROUND_OFF = 1e-9;
  private static final double ROUNDED = 0.5;

  /** Days, volumes and capacities are set in steps, and rounded. */
  private static final double CLOSE = 0.05;

  private final FoundSoftener found;
  private final HomeLoad home;

  Reckoned(FoundSoftener found, HomeLoad home) {
    this.found = found;
    this.home = home;
  }

  private PresentControl control() {
    return found.present().control();
  }

  /** Days of a clock, or the longest gap of weekdays; none of a meter. */
  Optional<Integer> days() {
    if (control() instanceof PresentControl.Clock clock) {
      return Optional.of(clock.days());
    } else if (control() instanceof PresentControl.Weekdays weekdays) {
      return Optional.of(new WeekdayClock(weekdays.days()).longestGap());
    }
    return Optional.empty();
  }

  /**
   * What the bed must hold by the setting: a clock's days at full use, the volume of a meter, or
   * the capacity that it was told; empty where nobody read that.
   */
  Optional<HardnessAmount> capacity() {
    if (control() instanceof ByVolume volume) {
      return Optional.of(home.compensatedHardness().in(volume.set()));
    } else if (control() instanceof ByHardness told) {
      return told.capacity();
    }
    return days().map(days -> home.dailyLoad().times(days));
  }

  /** Whether no clock can be set to fewer days. */
  boolean isShortest() {
    return days().filter(days -> days == 1).isPresent();
  }

  /** Whether that is clearly more than the salt restores. */
  boolean aboveUsable() {
    return capacity().filter(this::aboveUsable).isPresent();
  }

  private boolean aboveUsable(HardnessAmount capacity) {
    return capacity.exceeds(found.usable().times(1 + CLOSE));
  }

  /** Whether it is that much because it is the rating, stated or usual for the bed. */
  boolean isRating() {
    return aboveUsable()
        && !isShortest()
        && (days().isPresent() ? daysFromRating() : sameAsRating(capacity().orElseThrow()));
  }

  private HardnessAmount rated() {
    return found
        .present()
        .rated()
        .orElseGet(() -> RatedCapacityBasis.usualRating(found.resinVolume()));
  }

  private boolean daysFromRating() {
    int set = days().orElseThrow();
    return loads()
        .filter(load -> aboveUsable(load.times(set)))
        .mapToDouble(load -> rated().ratioTo(load))
        .anyMatch(exact -> set == shown(exact, set) || set == shown(exact + ROUNDED, set));
  }

  /** What a hand sets: at most 14 days unless more are set, of weekdays the longest gap. */
  private int shown(double exact, int set) {
    int most = control() instanceof PresentControl.Weekdays ? WEEK : Schedule.LONGEST_DAYS;
    int days = Math.max(1, (int) Math.min(exact + ROUND_OFF, Math.max(most, set)));
    return most == WEEK ? WeekdayClock.forGap(days).longestGap() : days;
  }

  private Stream<HardnessAmount> loads() {
    List<HardnessAmount> loads = new ArrayList<>(List.of(home.dailyLoad()));
    hardnesses().forEach(hardness -> loads.add(hardness.in(allowance())));
    if (home.use().expectedBasis() == UseBasis.BILL) {
      loads.add(home.expectedLoad());
    }
    return loads.stream();
  }

  private boolean sameAsRating(HardnessAmount capacity) {
    if (control() instanceof ByVolume volume) {
      return hardnesses()
          .anyMatch(hardness -> sameVolume(volume.set(), rated().asWaterOf(hardness)));
    }
    return close(capacity.ratioTo(rated()));
  }

  private boolean sameVolume(Volume set, Volume ofRating) {
    return close(set.ratioTo(ofRating)) || close(set.plus(allowance()).ratioTo(ofRating));
  }

  private static boolean close(double ratio) {
    return Math.abs(ratio - 1) <= CLOSE;
  }

  private Stream<Hardness> hardnesses() {
    return Stream.of(home.compensatedHardness(), home.site().softenedWater().hardness());
  }

  private Volume allowance() {
    Household household = home.site().household();
    return household.perPersonDaily().times(household.people() * home.softenedShare());
  }
}

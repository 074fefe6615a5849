package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What starts a regeneration of the softener that is already in the house, as it is set. */
public sealed interface PresentControl {
  /** Days of a clock, and longest intervals of a meter, that may be found: 1 to 99. */
  Bounds<Integer> DAYS = Bounds.of(1, 99);

  /** Volumes that a meter may be set to: 10 to 100,000 gal. */
  Bounds<Volume> SET_VOLUME = Bounds.of(Volume.ofGallons(10), Volume.ofGallons(100_000));

  /** Hardness that a meter may be set to: 1 to 200 gpg. */
  Bounds<Hardness> SET_HARDNESS =
      Bounds.of(Hardness.ofGrainsPerGallon(1), Hardness.ofGrainsPerGallon(200));

  /** Capacities that a meter may be set to: 1,000 to 1,000,000 grains. */
  Bounds<HardnessAmount> SET_CAPACITY =
      Bounds.of(HardnessAmount.ofGrains(1_000), HardnessAmount.ofGrains(1_000_000));

  /** Reserves that a meter may hold back besides: 0 to 50,000 gal. */
  Bounds<Volume> RESERVE = Bounds.of(Volume.ofGallons(0), Volume.ofGallons(50_000));

  /**
   * A clock that regenerates after fixed days.
   *
   * @param days between two regenerations; 1 to 99
   */
  record Clock(int days) implements PresentControl {
    /**
     * @param days between two regenerations
     * @throws IllegalArgumentException outside 1 to 99
     */
    public Clock {
      DAYS.require("days of the clock", days);
    }
  }

  /**
   * A clock that regenerates on chosen weekdays.
   *
   * @param days at least one
   */
  record Weekdays(Set<DayOfWeek> days) implements PresentControl {
    /**
     * Keeps its own copy of {@code days}.
     *
     * @param days at least one
     * @throws IllegalArgumentException when no day is chosen
     */
    public Weekdays {
      days = Collections.unmodifiableSet(EnumSet.copyOf(Require.someOf("weekdays", days)));
    }
  }

  /** A meter. */
  sealed interface Metered extends PresentControl {
    /** {@return whether it regenerates at once, and not in the night} */
    boolean atOnce();

    /** {@return what the control holds back besides its setting; empty when none is known} */
    Optional<Volume> reserve();

    /** {@return the days after which it regenerates in any case; empty when none are set} */
    Optional<Integer> longestDays();
  }

  /**
   * A meter that is set to a volume.
   *
   * @param set volume between two regenerations; 10 to 100,000 gal
   * @param atOnce whether it regenerates at once, and not in the night
   * @param reserve held back besides, 0 to 50,000 gal and below {@code set}; empty when none is
   *     known
   * @param longestDays after which it regenerates in any case, 1 to 99; empty when none are set
   */
  record ByVolume(
      Volume set, boolean atOnce, Optional<Volume> reserve, Optional<Integer> longestDays)
      implements Metered {
    /**
     * @param set volume between two regenerations
     * @param atOnce whether it regenerates at once
     * @param reserve held back besides
     * @param longestDays after which it regenerates in any case
     * @throws IllegalArgumentException outside the ranges above
     */
    public ByVolume {
      SET_VOLUME.require("volume that the meter is set to", set);
      requireRest(reserve, longestDays);
      requireBelow(reserve, set);
    }
  }

  /**
   * A meter that is told the hardness, and finds the volume from a capacity.
   *
   * @param hardness that it is set to; 1 to 200 gpg
   * @param capacity that it is set to, 1,000 to 1,000,000 grains; empty when not known
   * @param atOnce whether it regenerates at once, and not in the night
   * @param reserve held back besides, 0 to 50,000 gal and below the volume of capacity and
   *     hardness; empty when none is known
   * @param longestDays after which it regenerates in any case, 1 to 99; empty when none are set
   */
  record ByHardness(
      Hardness hardness,
      Optional<HardnessAmount> capacity,
      boolean atOnce,
      Optional<Volume> reserve,
      Optional<Integer> longestDays)
      implements Metered {
    /**
     * @param hardness that it is set to
     * @param capacity that it is set to
     * @param atOnce whether it regenerates at once
     * @param reserve held back besides
     * @param longestDays after which it regenerates in any case
     * @throws IllegalArgumentException outside the ranges above
     */
    public ByHardness {
      SET_HARDNESS.require("hardness that the meter is set to", hardness);
      capacity.ifPresent(set -> SET_CAPACITY.require("capacity that the meter is set to", set));
      requireRest(reserve, longestDays);
      capacity.ifPresent(set -> requireBelow(reserve, set.asWaterOf(hardness)));
    }
  }

  private static void requireRest(Optional<Volume> reserve, Optional<Integer> longestDays) {
    reserve.ifPresent(held -> RESERVE.require("reserve of the meter", held));
    longestDays.ifPresent(days -> DAYS.require("longest interval of the meter in days", days));
  }

  private static void requireBelow(Optional<Volume> reserve, Volume set) {
    reserve.filter(held -> held.compareTo(set) >= 0).ifPresent(held -> refuse(held, set));
  }

  private static void refuse(Volume held, Volume set) {
    throw new IllegalArgumentException(
        "a reserve of "
            + held
            + " leaves nothing of the "
            + set
            + " that the meter is set to; read both again");
  }

  /**
   * {@return a clock that regenerates after fixed days}
   *
   * @param days between two regenerations; 1 to 99
   */
  static PresentControl clock(int days) {
    return new Clock(days);
  }

  /**
   * {@return a clock that regenerates on chosen weekdays}
   *
   * @param days at least one
   */
  static PresentControl weekdays(Set<DayOfWeek> days) {
    return new Weekdays(days);
  }

  /**
   * {@return a meter that waits for the night, set to a volume}
   *
   * @param set volume between two regenerations; 10 to 100,000 gal
   */
  static PresentControl metered(Volume set) {
    return new ByVolume(set, false, Optional.empty(), Optional.empty());
  }

  /**
   * {@return a meter that waits for the night, told the hardness}
   *
   * @param hardness that it is set to; 1 to 200 gpg
   * @param capacity that it is set to, 1,000 to 1,000,000 grains; null when not known
   */
  static PresentControl metered(Hardness hardness, @Nullable HardnessAmount capacity) {
    return new ByHardness(
        hardness, Optional.ofNullable(capacity), false, Optional.empty(), Optional.empty());
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.DayCount;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Set volume = (usable − reserve) ÷ compensated hardness. An immediate control regenerates at that
 * volume. A delayed one waits for the night, by which time on average 0.61 of a day's use more has
 * passed: renewal theory gives (1 + CV²)/2 days for a coefficient of variation of 0.46. Example:
 * 25,600 − 5,040 grains at 22.4 gpg → 918 gal; at 141 gal a day a delayed control waits 7.1 days.
 * Source: renewal theory (Cox, 1962).
 */
public final class MeteredSchedule implements Schedule {
  private static final double SHORTEST_DAYS = 0.1;

  private final Control control;
  private final HardnessAmount usable;
  private final Reserve reserve;
  private final DailyVariation variation;
  private final Served served;
  private final Worked<Volume> setVolume;
  private final Worked<DayCount> expectedDays;

  /** The water served: its hardness, and its design and expected use of a day. */
  private record Served(Hardness hardness, Volume design, Volume expected) {}

  private MeteredSchedule(Builder builder, Served water) {
    control = builder.control;
    usable = builder.usable;
    reserve = builder.reserve;
    variation = builder.variation;
    served = water;
    setVolume =
        Worked.of(
            StepKind.SET_VOLUME,
            Sources.DEFINITION,
            usable,
            reserve.held(),
            served.hardness(),
            (capacity, held, hardness) -> capacity.minus(held).asWaterOf(hardness));
    double uncapped = uncappedDays();
    expectedDays =
        Worked.of(
            StepKind.EXPECTED_DAYS_METERED,
            Sources.RENEWAL,
            volumeToSet(),
            served.expected(),
            wait(control, variation),
            uncapped,
            (volume, use, excess, days) -> new DayCount(Math.min(LONGEST_DAYS, days)));
  }

  /**
   * A metered control of a bed.
   *
   * @param control a metered one
   * @param usable capacity between regenerations; more than zero
   * @throws IllegalArgumentException when the control has no meter or the capacity is not more than
   *     zero
   */
  public static Builder of(Control control, HardnessAmount usable) {
    if (!control.metered()) {
      throw new IllegalArgumentException(control + " has no meter");
    }
    return new Builder(control, Require.positive("usable capacity", usable));
  }

  /** Days that a delayed control waits on average until the night; none without a delay. */
  private static double wait(Control control, DailyVariation variation) {
    return control == Control.METERED_AT_NIGHT ? variation.meanExcess() : 0;
  }

  /** The reserve held back. */
  public Reserve reserve() {
    return reserve;
  }

  private Volume volumeToSet() {
    return setVolume.value();
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.of(volumeToSet());
  }

  @Override
  public double designDays() {
    return workedDesignDays().value().count();
  }

  private Worked<DayCount> workedDesignDays() {
    return Worked.of(
        StepKind.METERED_DAYS,
        Sources.DEFINITION,
        volumeToSet(),
        served.design(),
        (volume, use) -> new DayCount(Math.max(0, volume.ratioTo(use))));
  }

  /** Days of expected use until a regeneration, at least a fraction of one and at most 14. */
  @Override
  public double expectedDays() {
    return expectedDays.value().count();
  }

  private double uncappedDays() {
    double days = Math.max(0, volumeToSet().ratioTo(served.expected()));
    return control == Control.METERED_AT_NIGHT
        ? days + wait(control, variation)
        : Math.max(days, SHORTEST_DAYS);
  }

  @Override
  public double regenerationsPerYear() {
    return regenerations().value();
  }

  private Worked<Double> regenerations() {
    return Worked.of(
        StepKind.METERED_REGENERATIONS,
        Sources.DEFINITION,
        expectedDays.value(),
        days -> CalendarYear.DAYS / days.count());
  }

  @Override
  public double runOutShare() {
    if (control == Control.METERED_AT_ONCE) {
      return 0;
    }
    double daysHeld = reserve.held().asWaterOf(served.hardness()).ratioTo(served.expected());
    return variation.excessBeyond(daysHeld);
  }

  @Override
  public boolean feasible() {
    return volumeToSet().isPositive()
        && usable.asWaterOf(served.hardness()).compareTo(served.design()) >= 0;
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(reserve.steps());
    steps.add(setVolume.step());
    steps.add(workedDesignDays().step());
    steps.add(expectedDays.step());
    steps.add(regenerations().step());
    return steps;
  }

  /** Collects a metered schedule; without a reserve and with the usual variation unless set. */
  public static final class Builder {
    private final Control control;
    private final HardnessAmount usable;
    private Reserve reserve = Reserve.NONE;
    private DailyVariation variation = DailyVariation.USUAL;

    private Builder(Control control, HardnessAmount usable) {
      this.control = control;
      this.usable = usable;
    }

    /** Capacity held back. */
    public Builder reserve(Reserve reserve) {
      this.reserve = reserve;
      return this;
    }

    /** How the use of the days strays about the mean. */
    public Builder variation(DailyVariation variation) {
      this.variation = variation;
      return this;
    }

    /**
     * The water it serves.
     *
     * @param compensated compensated hardness; more than zero
     * @param design design use of a day; more than zero
     * @param expected expected use of a day; more than zero
     * @throws IllegalArgumentException when one of them is not
     */
    public MeteredSchedule serving(Hardness compensated, Volume design, Volume expected) {
      return new MeteredSchedule(
          this,
          new Served(
              Require.positive("compensated hardness", compensated),
              Require.positive("design use", design),
              Require.positive("expected use", expected)));
    }
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Set volume = (usable − reserve) ÷ compensated hardness. An immediate control regenerates at that
 * volume. A delayed one waits for the night, by which time on average 0.61 of a day's use more has
 * passed: renewal theory gives (1 + CV²)/2 days for a coefficient of variation of 0.46. Example:
 * 25,600 − 5,040 grains at 22.4 gpg → 918 gal; at 141 gal a day a delayed control waits 7.1 days.
 */
public final class MeteredSchedule implements Schedule {
  private static final double EXCESS_DAYS = DailyVariation.USUAL.meanExcess();

  private final Control control;
  private final HardnessAmount usable;
  private final Reserve reserve;
  private final Hardness hardness;
  private final Volume designUse;
  private final Volume expectedUse;

  private MeteredSchedule(Builder builder) {
    control = builder.control;
    usable = builder.usable;
    reserve = builder.reserve;
    hardness = builder.hardness;
    designUse = builder.designUse;
    expectedUse = builder.expectedUse;
  }

  /**
   * A metered control of a bed.
   *
   * @param control a metered one
   * @param usable capacity between regenerations
   */
  public static Builder of(Control control, HardnessAmount usable) {
    if (!control.metered()) {
      throw new IllegalArgumentException(control + " has no meter");
    }
    return new Builder(control, usable);
  }

  /** The reserve held back. */
  public Reserve reserve() {
    return reserve;
  }

  private Volume volumeToSet() {
    return usable.minus(reserve.held()).asWaterOf(hardness);
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.of(volumeToSet());
  }

  @Override
  public double designDays() {
    return Math.max(0, volumeToSet().ratioTo(designUse));
  }

  /** Days of expected use until a regeneration, at least a fraction of one and at most 14. */
  @Override
  public double expectedDays() {
    return Math.min(LONGEST_DAYS, uncappedDays());
  }

  private double uncappedDays() {
    double days = Math.max(0, volumeToSet().ratioTo(expectedUse));
    return control == Control.METERED_AT_NIGHT ? days + EXCESS_DAYS : Math.max(days, 0.1);
  }

  @Override
  public double runOutShare() {
    if (control == Control.METERED_AT_ONCE) {
      return 0;
    }
    double daysHeld = reserve.held().asWaterOf(hardness).ratioTo(expectedUse);
    return DailyVariation.USUAL.excessBeyond(daysHeld);
  }

  @Override
  public boolean feasible() {
    return volumeToSet().isPositive() && usable.asWaterOf(hardness).compareTo(designUse) >= 0;
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    if (control == Control.METERED_AT_NIGHT) {
      steps.add(reserveStep());
    }
    steps.add(
        new Step(
            StepKind.SET_VOLUME,
            List.of(Figure.of(usable), Figure.of(reserve.held()), Figure.of(hardness)),
            Figure.of(volumeToSet()),
            Sources.DEFINITION));
    steps.add(
        new Step(
            StepKind.METERED_DAYS,
            List.of(Figure.of(volumeToSet()), Figure.of(designUse)),
            Figure.days(designDays(), 1),
            Sources.DEFINITION));
    steps.add(
        new Step(
            StepKind.EXPECTED_DAYS_METERED,
            List.of(
                Figure.of(volumeToSet()),
                Figure.of(expectedUse),
                Figure.of(control == Control.METERED_AT_NIGHT ? EXCESS_DAYS : 0, 2),
                Figure.of(uncappedDays(), 2)),
            Figure.days(expectedDays(), 2),
            Sources.RENEWAL));
    steps.add(
        new Step(
            StepKind.METERED_REGENERATIONS,
            List.of(Figure.days(expectedDays(), 2)),
            Figure.of(regenerationsPerYear(), 1),
            Sources.DEFINITION));
    return steps;
  }

  private Step reserveStep() {
    Figure held = Figure.of(reserve.held());
    return reserve.byRisk()
        ? new Step(
            StepKind.RESERVE_BY_RISK,
            List.of(Figure.of(reserve.days(), 3), Figure.of(expectedUse), Figure.of(hardness)),
            held,
            Sources.RENEWAL)
        : new Step(
            StepKind.RESERVE,
            List.of(Figure.of(designUse), Figure.of(hardness)),
            held,
            Sources.RESERVE);
  }

  /** Collects a metered schedule; without a reserve unless set. */
  public static final class Builder {
    private final Control control;
    private final HardnessAmount usable;
    private Reserve reserve = Reserve.NONE;
    private Hardness hardness = Hardness.ofGrainsPerGallon(1);
    private Volume designUse = Volume.ofGallons(1);
    private Volume expectedUse = Volume.ofGallons(1);

    private Builder(Control control, HardnessAmount usable) {
      this.control = control;
      this.usable = usable;
    }

    /** Capacity held back. */
    public Builder reserve(Reserve reserve) {
      this.reserve = reserve;
      return this;
    }

    /**
     * The water it serves.
     *
     * @param compensated compensated hardness; more than zero
     * @param design design use of a day; more than zero
     * @param expected expected use of a day; more than zero
     */
    public MeteredSchedule serving(Hardness compensated, Volume design, Volume expected) {
      hardness = Require.positive("compensated hardness", compensated);
      designUse = Require.positive("design use", design);
      expectedUse = Require.positive("expected use", expected);
      return new MeteredSchedule(this);
    }
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.Bounds;
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
 * volume, a delayed one waits for the night. Example: 25,600 − 5,040 grains at 22.4 gpg → 918 gal.
 * Source: quotient of the figures named.
 */
public final class MeteredSchedule implements Schedule {
  /** Longest intervals that may be set: 1 to 14 days. */
  public static final Bounds<Integer> LONGEST = Bounds.of(1, LONGEST_DAYS);

  /** Design days that a bed must hold: 0.01 to 14. */
  public static final Bounds<Double> LEAST = Bounds.of(0.01, (double) LONGEST_DAYS);

  private static final Volume NOTHING = Volume.ofGallons(0);

  private final HardnessAmount usable;
  private final Reserve reserve;
  private final int longestDays;
  private final double leastDays;
  private final Hardness hardness;
  private final Volume design;
  private final Worked<Volume> setVolume;

  private MeteredSchedule(Builder builder, Hardness hardness, Volume design) {
    usable = builder.usable;
    reserve = builder.reserve;
    longestDays = builder.longestDays;
    leastDays = builder.leastDays;
    this.hardness = hardness;
    this.design = design;
    setVolume =
        Worked.of(
            StepKind.SET_VOLUME,
            Sources.DEFINITION,
            usable,
            reserve.held(),
            hardness,
            (capacity, held, compensated) -> capacity.minus(held).asWaterOf(compensated));
  }

  /**
   * {@return a metered control of a bed}
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
    return new Builder(Require.positive("usable capacity", usable));
  }

  /** {@return the reserve held back} */
  public Reserve reserve() {
    return reserve;
  }

  @Override
  public Optional<Volume> setVolume() {
    return Optional.of(setVolume.value()).filter(volume -> feasible());
  }

  /**
   * {@return what is set at the meter; empty where the bed is not {@link #feasible()}}
   *
   * @param form whether the reserve is deducted before, or set beside the rest
   */
  public Optional<MeterSetting> setting(ReserveForm form) {
    return Optional.of(form)
        .filter(chosen -> feasible())
        .map(
            chosen ->
                chosen == ReserveForm.DEDUCTED
                    ? MeterSetting.of(usable.minus(reserve.held()), hardness, NOTHING)
                    : MeterSetting.of(usable, hardness, reserve.held().asWaterOf(hardness)));
  }

  @Override
  public double designDays() {
    return workedDesignDays().value().count();
  }

  /** Of a bed that does not hold its reserve and a day, none. */
  private Worked<DayCount> workedDesignDays() {
    return Worked.of(
        StepKind.METERED_DAYS,
        Sources.DEFINITION,
        setVolume.value(),
        design,
        (volume, use) -> new DayCount(Math.max(0, volume.ratioTo(use))));
  }

  @Override
  public int longestDays() {
    return longestDays;
  }

  @Override
  public boolean feasible() {
    return setVolume.value().isPositive()
        && usable.asWaterOf(hardness).compareTo(design.times(leastDays)) >= 0;
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(reserve.steps());
    if (feasible()) {
      steps.add(setVolume.step());
      steps.add(workedDesignDays().step());
    }
    return steps;
  }

  /**
   * Collects a metered schedule; without a reserve and for at least one and up to 14 days unless
   * set.
   */
  public static final class Builder {
    private final HardnessAmount usable;
    private Reserve reserve = Reserve.NONE;
    private int longestDays = LONGEST_DAYS;
    private double leastDays = 1;

    private Builder(HardnessAmount usable) {
      this.usable = usable;
    }

    /**
     * Capacity held back.
     *
     * @param reserve zero or more
     * @return this builder
     */
    public Builder reserve(Reserve reserve) {
      this.reserve = reserve;
      return this;
    }

    /**
     * Days after which it regenerates in any case; 14 unless set.
     *
     * @param days 1 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder longestDays(int days) {
      this.longestDays = LONGEST.require("longest interval in days", days);
      return this;
    }

    /**
     * Design days that the bed must hold to be feasible; 1 unless set. Tanks that take turns need
     * hold no more than what is drawn until the other one is ready.
     *
     * @param days 0.01 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leastDays(double days) {
      this.leastDays = LEAST.require("design days that the bed must hold", days);
      return this;
    }

    /**
     * {@return the schedule for the water it serves}
     *
     * @param compensated compensated hardness; more than zero
     * @param design design use of a day; more than zero
     * @throws IllegalArgumentException when one of them is not
     */
    public MeteredSchedule serving(Hardness compensated, Volume design) {
      return new MeteredSchedule(
          this,
          Require.positive("compensated hardness", compensated),
          Require.positive("design use", design));
    }
  }
}

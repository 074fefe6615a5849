package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.time.Duration;
import java.util.List;

/**
 * Brine refill: water = salt ÷ 3 lb/gal, minutes = water ÷ refill rate. A controller takes steps,
 * so the minutes to set are rounded up to its step, and the salt that the setting really dissolves
 * is stated beside the salt wanted; the year is reckoned with what is really dissolved. Example:
 * 7.68 lb → 2.56 gal → 5.12 min at 0.5 gpm, set 5.2 min, giving 7.8 lb. Source: common practice (3
 * lb/gal; handbook 2.99 at 60 °F).
 */
public final class BrineRefill implements Explained {
  private final Mass wanted;
  private final Regenerant regenerant;
  private final FlowRate rate;
  private final Duration step;

  /**
   * @param basis the capacity basis whose salt is wanted
   * @param rate flow of the refill; more than zero
   * @param step smallest step of the controller; more than zero
   * @throws IllegalArgumentException outside the ranges above
   */
  public BrineRefill(CapacityBasis basis, FlowRate rate, Duration step) {
    wanted = basis.saltPerRegeneration();
    regenerant = basis.regenerant();
    this.rate = Require.positive("refill rate", rate);
    if (step.isNegative() || step.isZero()) {
      throw new IllegalArgumentException(
          "the refill step is " + step + ", but must be more than 0");
    }
    this.step = step;
  }

  /** The salt dissolved. */
  public Regenerant regenerant() {
    return regenerant;
  }

  /** The flow of the refill. */
  public FlowRate rate() {
    return rate;
  }

  /** Water that dissolves the salt wanted. */
  public Volume exactWater() {
    return Volume.ofGallons(wanted.ratioTo(regenerant.dissolvedByOneGallon()));
  }

  /** Minutes that give exactly the salt wanted. */
  public Duration exact() {
    return rate.timeFor(exactWater());
  }

  /** The next step of the controller that gives at least the salt wanted. */
  public Duration set() {
    double steps = (double) exact().toNanos() / step.toNanos();
    return step.multipliedBy((long) Math.ceil(steps - 1e-6));
  }

  /** Water let in by the setting. */
  public Volume water() {
    return rate.during(set());
  }

  /** Saturated brine that the setting makes. */
  public Volume brine() {
    return water().times(regenerant.brinePerWater());
  }

  /** Salt dissolved by the setting. */
  public Mass saltGiven() {
    return regenerant.dissolvedByOneGallon().times(water().gallons());
  }

  private Source source() {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? Sources.REFILL : Sources.CRC_SOLUBILITY;
  }

  @Override
  public List<Step> steps() {
    Figure perGallon = Figure.of(regenerant.dissolvedByOneGallon());
    return List.of(
        new Step(
            StepKind.REFILL_WATER,
            List.of(Figure.of(wanted), perGallon),
            Figure.of(exactWater(), 3),
            source()),
        new Step(
            StepKind.REFILL_MINUTES,
            List.of(Figure.of(exactWater(), 3), Figure.of(rate, 2)),
            Figure.of(exact(), 2),
            Sources.DEFINITION),
        new Step(
            StepKind.SALT_GIVEN,
            List.of(Figure.of(Minutes.of(set()), 1), Figure.of(rate, 2), perGallon),
            Figure.of(saltGiven()),
            source()));
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Brine refill: water = salt ÷ 3 lb/gal, minutes = water ÷ refill rate. A controller takes steps,
 * so the minutes to set are rounded up to its step, and the salt that the setting really dissolves
 * is stated beside the salt wanted; the year is reckoned with what is really dissolved. Example:
 * 7.68 lb → 2.56 gal → 5.12 min at 0.5 gpm, set 5.2 min, giving 7.8 lb. Source: common practice (3
 * lb/gal; handbook 2.99 at 60 °F).
 */
public final class BrineRefill implements Explained {
  private final Regenerant regenerant;
  private final FlowRate rate;
  private final Duration set;
  private final Worked<Volume> exactWater;
  private final Worked<Duration> exact;
  private final Worked<Mass> given;

  /**
   * @param basis the capacity basis whose salt is wanted
   * @param rate flow of the refill; 0.05 to 5 gpm
   * @param step smallest step of the controller; 0.01 to 5 minutes
   * @param brineTank temperature of the brine tank, on which depends how much potassium chloride
   *     dissolves
   * @throws IllegalArgumentException outside the ranges above
   */
  public BrineRefill(CapacityBasis basis, FlowRate rate, Duration step, Temperature brineTank) {
    this(
        basis.saltPerRegeneration(),
        basis.regenerant(),
        rate,
        brineTank,
        toStep(Softener.REFILL_STEP.require("refill step", step)));
  }

  private BrineRefill(
      Mass wanted,
      Regenerant regenerant,
      FlowRate rate,
      Temperature brineTank,
      UnaryOperator<Duration> toStep) {
    this.regenerant = regenerant;
    this.rate = Softener.REFILL_RATE.require("refill rate", rate);
    Mass dissolved = regenerant.dissolvedByOneGallon(brineTank);
    exactWater =
        Worked.of(
            StepKind.REFILL_WATER,
            source(),
            wanted,
            dissolved,
            (salt, perGallon) -> Volume.ofGallons(salt.ratioTo(perGallon)));
    exact =
        Worked.of(
            StepKind.REFILL_MINUTES,
            Sources.DEFINITION,
            exactWater(),
            rate,
            (water, flow) -> flow.timeFor(water));
    set = toStep.apply(exact());
    given =
        Worked.of(
            StepKind.SALT_GIVEN,
            source(),
            set,
            rate,
            dissolved,
            (time, flow, perGallon) -> perGallon.times(flow.during(time).gallons()));
  }

  /**
   * {@return a refill as a control is set to it, whatever salt is wanted}
   *
   * @param regenerant the salt in the brine tank
   * @param rate flow of the refill; 0.05 to 5 gpm
   * @param set time of the refill; more than zero
   * @param brineTank temperature of the brine tank
   * @throws IllegalArgumentException outside the ranges above
   */
  public static BrineRefill asSet(
      Regenerant regenerant, FlowRate rate, Duration set, Temperature brineTank) {
    Mass dissolved = regenerant.dissolvedByOneGallon(brineTank);
    Mass salt = dissolved.times(Require.positive("refill", rate.during(set)).gallons());
    return new BrineRefill(salt, regenerant, rate, brineTank, exact -> set);
  }

  private static UnaryOperator<Duration> toStep(Duration step) {
    return exact -> {
      double steps = (double) exact.toNanos() / step.toNanos();
      return step.multipliedBy((long) Math.ceil(steps - 1e-6));
    };
  }

  private Source source() {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? Sources.REFILL : Sources.CRC_SOLUBILITY;
  }

  /** {@return the salt dissolved} */
  public Regenerant regenerant() {
    return regenerant;
  }

  /** {@return the flow of the refill} */
  public FlowRate rate() {
    return rate;
  }

  /** {@return the water that dissolves the salt wanted} */
  public Volume exactWater() {
    return exactWater.value();
  }

  /** {@return the minutes that give exactly the salt wanted} */
  public Duration exact() {
    return exact.value();
  }

  /** {@return the next step of the controller that gives at least the salt wanted} */
  public Duration set() {
    return set;
  }

  /** {@return the water let in by the setting} */
  public Volume water() {
    return rate.during(set);
  }

  /** {@return the saturated brine that the setting makes} */
  public Volume brine() {
    return water().times(regenerant.brinePerWater());
  }

  /** {@return the salt dissolved by the setting} */
  public Mass saltGiven() {
    return given.value();
  }

  @Override
  public List<Step> steps() {
    return List.of(exactWater.step(), exact.step(), given.step());
  }
}

package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps of one regeneration with their minutes, flows and water, as a control is set to them:
 * brine draw and slow rinse in whole minutes, rounded up, and the water of a step is its flow in
 * those minutes.
 *
 * <p>Backwash at the flow that the bed needs; brine is drawn at 0.2 gpm/ft3 by 0.4 gpm/ft3 of
 * water, which thins saturated brine to about a tenth salt; the slow rinse goes on at 0.4 gpm/ft3;
 * the fast rinse runs at 1.75 gpm/ft3 (published 1.5-2). A gallon of water makes 1.128 gallons of
 * saturated brine at 60 °F. Sources: UFC 3-240-13FN, Salt Institute, common practice.
 */
public final class Cycle implements Explained {
  private static final double SUCTION_GPM_PER_CUBIC_FOOT = 0.2;
  private static final double DRIVE_GPM_PER_CUBIC_FOOT = 0.4;
  private static final double FAST_RINSE_GPM_PER_CUBIC_FOOT = 1.75;

  /** Least minutes by which a step must be longer than a whole number to be rounded up. */
  private static final double ROUND_OFF = 1e-6;

  private final CyclePlan plan;
  private final List<CycleStep> parts;
  private final Worked<Volume> water;

  /**
   * @param plan minutes and volumes to wash with
   * @param resin volume of the bed; more than zero
   * @param backwash flow of the backwash; more than zero
   * @param refill the refill that ends the cycle
   * @throws IllegalArgumentException when volume or flow is not more than zero
   */
  public Cycle(CyclePlan plan, Volume resin, FlowRate backwash, BrineRefill refill) {
    this.plan = plan;
    Require.positive("resin volume", resin);
    FlowRate drive = perCubicFoot(DRIVE_GPM_PER_CUBIC_FOOT, resin);
    Volume brine = refill.brine();
    Volume slowRinse = Volume.ofGallons(plan.slowRinseGallonsPerCubicFoot() * resin.cubicFeet());
    parts =
        List.of(
            new CycleStep(CycleStep.Kind.BACKWASH, plan.backwash(), backwash),
            new CycleStep(
                CycleStep.Kind.BRINE_DRAW,
                wholeMinutes(perCubicFoot(SUCTION_GPM_PER_CUBIC_FOOT, resin).timeFor(brine)),
                drive),
            new CycleStep(CycleStep.Kind.SLOW_RINSE, wholeMinutes(drive.timeFor(slowRinse)), drive),
            new CycleStep(
                CycleStep.Kind.FAST_RINSE,
                plan.fastRinse(),
                perCubicFoot(FAST_RINSE_GPM_PER_CUBIC_FOOT, resin)),
            new CycleStep(CycleStep.Kind.BRINE_REFILL, refill.set(), refill.rate()));
    water =
        Worked.of(
            StepKind.CYCLE_WATER,
            Sources.DEFINITION,
            parts.stream().map(CycleStep::water).toList(),
            waters -> waters.stream().reduce(Volume.ofGallons(0), Volume::plus));
  }

  private static FlowRate perCubicFoot(double gallonsPerMinute, Volume resin) {
    return FlowRate.ofGallonsPerMinute(gallonsPerMinute * resin.cubicFeet());
  }

  private static Duration wholeMinutes(Duration exact) {
    return Duration.ofMinutes((long) Math.ceil(Minutes.of(exact) - ROUND_OFF));
  }

  /** {@return the plan followed} */
  public CyclePlan plan() {
    return plan;
  }

  /** {@return the steps in their order} */
  public List<CycleStep> parts() {
    return parts;
  }

  /**
   * {@return the step of a kind}
   *
   * @param kind which step
   */
  public CycleStep part(CycleStep.Kind kind) {
    return parts.get(kind.ordinal());
  }

  /** {@return the water of the whole cycle} */
  public Volume water() {
    return water.value();
  }

  /** {@return the time of the whole cycle} */
  public Duration time() {
    return parts.stream().map(CycleStep::time).reduce(Duration.ZERO, Duration::plus);
  }

  /** {@return how long after the start each step begins, in their order} */
  public List<Duration> beginsAfter() {
    List<Duration> all = new ArrayList<>();
    Duration past = Duration.ZERO;
    for (CycleStep part : parts) {
      all.add(past);
      past = past.plus(part.time());
    }
    return List.copyOf(all);
  }

  /**
   * {@return when each step begins, in their order, past midnight where it comes to that}
   *
   * @param start when the first one begins
   */
  public List<LocalTime> begins(LocalTime start) {
    return beginsAfter().stream().map(start::plus).toList();
  }

  /** {@return the time of brine draw and slow rinse, for controls that set both as one} */
  public Duration drawAndRinse() {
    return part(CycleStep.Kind.BRINE_DRAW).time().plus(part(CycleStep.Kind.SLOW_RINSE).time());
  }

  /** {@return the water of brine draw and slow rinse} */
  public Volume drawAndRinseWater() {
    return part(CycleStep.Kind.BRINE_DRAW).water().plus(part(CycleStep.Kind.SLOW_RINSE).water());
  }

  @Override
  public List<Step> steps() {
    return List.of(
        step(StepKind.BACKWASH_WATER, CycleStep.Kind.BACKWASH, Sources.HOUSEHOLD_CYCLE),
        step(StepKind.BRINE_DRAW_WATER, CycleStep.Kind.BRINE_DRAW, Sources.COMMON_PRACTICE),
        step(StepKind.SLOW_RINSE_WATER, CycleStep.Kind.SLOW_RINSE, Sources.UFC_RINSE),
        step(StepKind.FAST_RINSE_WATER, CycleStep.Kind.FAST_RINSE, Sources.HOUSEHOLD_CYCLE),
        water.step());
  }

  private Step step(StepKind kind, CycleStep.Kind of, Source source) {
    CycleStep part = part(of);
    return Worked.of(kind, source, part.time(), part.flow(), (time, flow) -> flow.during(time))
        .step();
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.hydraulics.Range;
import io.github.brinewright.regeneration.DrainFlow;
import io.github.brinewright.source.Sources;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.units.FlowRate;
import io.github.brinewright.units.FlowVelocity;
import io.github.brinewright.units.Length;
import io.github.brinewright.units.Pressure;
import java.util.List;

/**
 * Flow through one unit at one home: pressure loss at the home's peak flow, and the backwash its
 * bed needs at the water's temperature.
 */
public final class FlowCheck implements Explained {
  private final SoftenerUnit unit;
  private final FlowRate peak;
  private final Fluid water;
  private final Backwash backwash;
  private final Range<Pressure> loss;

  /** Checks a unit at a home. */
  public FlowCheck(SoftenerUnit unit, HomeLoad home) {
    this.unit = unit;
    peak = home.peakFlow();
    water = Fluid.water(home.temperature());
    backwash = new Backwash(unit.resin(), home.temperature(), Backwash.USUAL_EXPANSION);
    loss =
        new Range<>(
            bed(PackedBed.LOOSE).loss(velocity(), water).plus(valveLoss()),
            bed(PackedBed.DENSE).loss(velocity(), water).plus(valveLoss()));
  }

  private PackedBed bed(double voidage) {
    return new PackedBed(bedDepth(), unit.resin().beadSize(), voidage);
  }

  private FlowVelocity velocity() {
    return unit.vessel().area().velocityOf(peak);
  }

  private Pressure valveLoss() {
    double ratio = peak.ratioTo(unit.serviceFlow());
    return unit.valveLoss().times(ratio * ratio);
  }

  /** The home's peak flow. */
  public FlowRate peak() {
    return peak;
  }

  /** Depth of the bed. */
  public Length bedDepth() {
    return unit.vessel().depthOf(unit.resinVolume());
  }

  /** Loss of bed and valve at peak flow, between a loose and a dense bed. */
  public Range<Pressure> pressureLoss() {
    return loss;
  }

  /** Whether the formula of the pressure loss was made for this flow. */
  public boolean withinErgun() {
    return bed(PackedBed.DENSE).reynolds(velocity(), water) <= PackedBed.HIGHEST_REYNOLDS;
  }

  /** Flow that lifts the bed by half its depth. */
  public FlowRate backwash() {
    return backwash.velocity().through(unit.vessel().area());
  }

  /** The drain flow to fit. */
  public DrainFlow drain() {
    return new DrainFlow(backwash(), unit.drainFlows());
  }

  @Override
  public List<Step> steps() {
    return List.of(
        new Step(
            StepKind.BED_DEPTH,
            List.of(
                Figure.of(unit.resinVolume().cubicFeet(), 2),
                Figure.of(unit.vessel().area().squareFeet(), 3)),
            Figure.of(bedDepth(), 1),
            Sources.DEFINITION),
        new Step(
            StepKind.FLOW_VELOCITY,
            List.of(Figure.of(peak), Figure.of(unit.vessel().area().squareFeet(), 3)),
            Figure.of(velocity().metresPerSecond(), 5),
            Sources.DEFINITION),
        loss(StepKind.PRESSURE_LOSS_LOOSE, PackedBed.LOOSE, loss.low()),
        loss(StepKind.PRESSURE_LOSS_DENSE, PackedBed.DENSE, loss.high()),
        new Step(
            StepKind.BACKWASH_FLOW,
            List.of(
                Figure.of(backwash.terminal().gallonsPerMinutePerSquareFoot(), 2),
                Figure.of(backwash.voidage(), 4),
                Figure.of(backwash.exponent(), 3),
                Figure.of(unit.vessel().area().squareFeet(), 3)),
            Figure.of(backwash(), 2),
            Sources.RICHARDSON_ZAKI));
  }

  private Step loss(StepKind kind, double voidage, Pressure result) {
    return new Step(
        kind,
        List.of(
            Figure.of(bedDepth().metres(), 4),
            Figure.of(water.viscosity().millipascalSeconds() / 1000, 6),
            Figure.of(velocity().metresPerSecond(), 5),
            Figure.of(1 - voidage, 2),
            Figure.of(voidage, 2),
            Figure.of(unit.resin().beadSize().metres(), 5),
            Figure.of(water.density(), 1),
            Figure.of(valveLoss(), 2)),
        Figure.of(result, 1),
        Sources.ERGUN);
  }
}

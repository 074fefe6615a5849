package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.regeneration.DrainFlow;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * Flow through one softener at one home: pressure loss at the home's peak flow, and the backwash
 * its bed needs at the water's temperature.
 */
public final class BedFlow implements Explained {
  private final Softener softener;
  private final FlowRate peak;
  private final Fluid water;
  private final Backwash backwash;
  private final Range<Pressure> loss;

  /** Checks a softener at a home. */
  public BedFlow(Softener softener, HomeLoad home) {
    this.softener = softener;
    peak = home.peakFlow();
    water = Fluid.water(home.temperature());
    backwash = new Backwash(softener.resin(), home.temperature(), Backwash.USUAL_EXPANSION);
    loss =
        new Range<>(
            bed(PackedBed.LOOSE).loss(velocity(), water).plus(valveLoss()),
            bed(PackedBed.DENSE).loss(velocity(), water).plus(valveLoss()));
  }

  private PackedBed bed(double voidage) {
    return new PackedBed(bedDepth(), softener.resin().beadSize(), voidage);
  }

  private FlowVelocity velocity() {
    return softener.vessel().area().velocityOf(peak);
  }

  private Pressure valveLoss() {
    double ratio = peak.ratioTo(softener.serviceFlow());
    return softener.valveLoss().times(ratio * ratio);
  }

  /** The home's peak flow. */
  public FlowRate peak() {
    return peak;
  }

  /** Depth of the bed. */
  public Length bedDepth() {
    return softener.vessel().depthOf(softener.resinVolume());
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
    return backwash.velocity().through(softener.vessel().area());
  }

  /** The drain flow to fit. */
  public DrainFlow drain() {
    return new DrainFlow(backwash(), softener.drainFlows());
  }

  @Override
  public List<Step> steps() {
    return List.of(
        new Step(
            StepKind.BED_DEPTH,
            List.of(
                Figure.of(softener.resinVolume().cubicFeet(), 2),
                Figure.of(softener.vessel().area().squareFeet(), 3)),
            Figure.of(bedDepth(), 1),
            Sources.DEFINITION),
        new Step(
            StepKind.FLOW_VELOCITY,
            List.of(Figure.of(peak), Figure.of(softener.vessel().area().squareFeet(), 3)),
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
                Figure.of(softener.vessel().area().squareFeet(), 3)),
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
            Figure.of(softener.resin().beadSize().metres(), 5),
            Figure.of(water.density(), 1),
            Figure.of(valveLoss(), 2)),
        Figure.of(result, 1),
        Sources.ERGUN);
  }
}

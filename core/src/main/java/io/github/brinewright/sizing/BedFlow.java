package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.regeneration.DrainFlow;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;

/**
 * Flow through one softener at one home: pressure loss at the home's peak flow, and the backwash
 * its bed needs at the water's temperature.
 */
public final class BedFlow implements Explained {
  private final Softener softener;
  private final int tanks;
  private final Worked<FlowRate> ofEachTank;
  private final FlowRate peak;
  private final Fluid water;
  private final Worked<Length> depth;
  private final Worked<FlowVelocity> velocity;
  private final Worked<Pressure> loose;
  private final Worked<Pressure> dense;
  private final Worked<FlowRate> backwash;

  /**
   * Checks a softener at a home.
   *
   * @param softener whose bed it is
   * @param home peak flow and temperature of the water
   */
  public BedFlow(Softener softener, HomeLoad home) {
    this.softener = softener;
    tanks = TankLoad.sharing(softener);
    ofEachTank =
        Worked.of(
            StepKind.PEAK_OF_EACH_TANK,
            Sources.DEFINITION,
            home.peakThroughBed(),
            tanks,
            (flow, number) -> flow.times(1.0 / number));
    peak = ofEachTank.value();
    water = Fluid.water(home.temperature());
    Area area = softener.vessel().area();
    depth =
        Worked.of(
            StepKind.BED_DEPTH,
            Sources.DEFINITION,
            softener.resinVolume(),
            area,
            (volume, section) -> section.depthOf(volume));
    velocity =
        Worked.of(
            StepKind.FLOW_VELOCITY,
            Sources.DEFINITION,
            peak,
            area,
            (flow, section) -> section.velocityOf(flow));
    loose = loss(StepKind.PRESSURE_LOSS_LOOSE, PackedBed.LOOSE);
    dense = loss(StepKind.PRESSURE_LOSS_DENSE, PackedBed.DENSE);
    Backwash lifting = new Backwash(softener.resin(), home.temperature(), Backwash.USUAL_EXPANSION);
    backwash =
        Worked.of(
            StepKind.BACKWASH_FLOW,
            Sources.RICHARDSON_ZAKI,
            lifting.terminal(),
            lifting.voidage(),
            lifting.exponent(),
            area,
            (terminal, voidage, exponent, section) ->
                terminal.times(Math.pow(voidage, exponent)).through(section));
  }

  private PackedBed bed(double voidage) {
    return new PackedBed(bedDepth(), softener.resin().beadSize(), voidage);
  }

  private Worked<Pressure> loss(StepKind kind, double voidage) {
    return Worked.of(
        kind,
        Sources.ERGUN,
        bed(voidage),
        water,
        velocity.value(),
        valveLoss(),
        (bed, fluid, flow, valve) -> bed.loss(flow, fluid).plus(valve));
  }

  private Pressure valveLoss() {
    double ratio = peak.ratioTo(softener.serviceFlow());
    return softener.valveLoss().times(ratio * ratio);
  }

  /** {@return the home's peak flow through one bed: a share of it where tanks run in parallel} */
  public FlowRate peak() {
    return peak;
  }

  /** {@return the depth of the bed} */
  public Length bedDepth() {
    return depth.value();
  }

  /** {@return the loss of bed and valve at peak flow, between a loose and a dense bed} */
  public Range<Pressure> pressureLoss() {
    return new Range<>(loose.value(), dense.value());
  }

  /** {@return whether the formula of the pressure loss was made for this flow} */
  public boolean withinErgun() {
    return bed(PackedBed.DENSE).reynolds(velocity.value(), water) <= PackedBed.HIGHEST_REYNOLDS;
  }

  /** {@return the flow that lifts the bed by half its depth} */
  public FlowRate backwash() {
    return backwash.value();
  }

  /** {@return the drain flow to fit} */
  public DrainFlow drain() {
    return new DrainFlow(backwash(), softener.drainFlows());
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(tanks > 1 ? ofEachTank.steps() : List.of());
    steps.addAll(
        List.of(depth.step(), velocity.step(), loose.step(), dense.step(), backwash.step()));
    return steps;
  }
}

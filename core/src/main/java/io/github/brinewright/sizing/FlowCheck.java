package io.github.brinewright.sizing;

import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.hydraulics.Range;
import io.github.brinewright.units.FlowRate;
import io.github.brinewright.units.FlowVelocity;
import io.github.brinewright.units.Length;
import io.github.brinewright.units.Pressure;

/**
 * Flow through one unit at one home: pressure loss at the home's peak flow, and the backwash its
 * bed needs at the water's temperature.
 */
public final class FlowCheck {
  private final SoftenerUnit unit;
  private final FlowRate peak;
  private final Range<Pressure> loss;
  private final FlowRate backwash;

  /** Checks a unit at a home. */
  public FlowCheck(SoftenerUnit unit, HomeLoad home) {
    this.unit = unit;
    peak = home.peakFlow();
    Fluid water = Fluid.water(home.temperature());
    Pressure valve = valveLossAt(peak);
    loss =
        new Range<>(
            bed(PackedBed.LOOSE).loss(velocity(), water).plus(valve),
            bed(PackedBed.DENSE).loss(velocity(), water).plus(valve));
    backwash =
        Backwash.velocity(unit.resin(), home.temperature(), Backwash.USUAL_EXPANSION)
            .through(unit.vessel().area());
  }

  private PackedBed bed(double voidage) {
    return new PackedBed(bedDepth(), unit.resin().beadSize(), voidage);
  }

  private FlowVelocity velocity() {
    return unit.vessel().area().velocityOf(peak);
  }

  private Pressure valveLossAt(FlowRate flow) {
    double ratio = flow.ratioTo(unit.serviceFlow());
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

  /** Flow that lifts the bed by half its depth. */
  public FlowRate backwash() {
    return backwash;
  }
}

package io.github.brinewright.comparison;

import io.github.brinewright.finding.Limits;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Holds one design against the margins, in their order. */
final class MarginChecks {
  /** One day in ten is above the design day that is held back where no risk was chosen. */
  private static final double BEYOND_DESIGN_DAY = 0.1;

  private static final double MUCH_IRON = 2;
  private static final double MANY_SOLIDS = 750;

  private final Design design;
  private final Margins margins;
  private final Limits limits;
  private final HardWaterYear year;
  private final List<MarginCheck> checks = new ArrayList<>();

  private MarginChecks(Design design, Margins margins, Limits limits, HardWaterYear year) {
    this.design = design;
    this.margins = margins;
    this.limits = limits;
    this.year = year;
  }

  /** The checks of a design that serves the home. */
  static List<MarginCheck> of(Design design, Margins margins, Limits limits, HardWaterYear year) {
    MarginChecks all = new MarginChecks(design, margins, limits, year);
    all.intervals();
    all.flow();
    all.pressure();
    all.hardWater();
    all.dosage();
    return List.copyOf(all.checks);
  }

  private void intervals() {
    days(Margin.INTERVAL_MEAN, design.year().orElseThrow().daysBetween(), margins.meanDays());
    days(Margin.INTERVAL_DESIGN, design.schedule().designDays(), margins.designDays());
  }

  private void days(Margin margin, double days, double least) {
    checks.add(MarginCheck.of(margin, days, least, value -> Figure.days(value, 1)));
  }

  private void flow() {
    checks.add(
        MarginCheck.of(
            Margin.PEAK_ABOVE_SERVICE_FLOW,
            peak().gallonsPerMinute(),
            softener().serviceFlow().gallonsPerMinute() * margins.peakShare(),
            value -> Figure.of(FlowRate.ofGallonsPerMinute(value))));
    loading(Margin.AREA_LOADING_SERVICE, inUse(), margins.serviceLoading());
    loading(Margin.AREA_LOADING_PEAK, peak(), margins.peakLoading());
  }

  private void loading(Margin margin, FlowRate flow, FlowVelocity most) {
    checks.add(
        MarginCheck.of(
            margin,
            area().velocityOf(flow).gallonsPerMinutePerSquareFoot(),
            most.gallonsPerMinutePerSquareFoot(),
            value -> Figure.of(FlowVelocity.ofGallonsPerMinutePerSquareFoot(value))));
  }

  private Softener softener() {
    return design.softener();
  }

  private Area area() {
    return softener().vessel().area();
  }

  private FlowRate peak() {
    return design.flow().peak();
  }

  /** The home's peak, as far as the unit is made for it. */
  private FlowRate inUse() {
    return peak().exceeds(softener().serviceFlow()) ? softener().serviceFlow() : peak();
  }

  private void pressure() {
    pressure(Margin.PRESSURE_LOSS, lossInUse(), margins.pressureLoss());
    design
        .home()
        .site()
        .supply()
        .pressure()
        .map(supply -> supply.minus(design.flow().pressureLoss().high()))
        .map(left -> left.max(Pressure.ofPsi(0)))
        .ifPresent(left -> pressure(Margin.PRESSURE_LEFT, left, margins.pressureLeft()));
  }

  private void pressure(Margin margin, Pressure value, Pressure limit) {
    checks.add(
        MarginCheck.of(margin, value.psi(), limit.psi(), psi -> Figure.of(Pressure.ofPsi(psi))));
  }

  private Pressure lossInUse() {
    PackedBed bed =
        new PackedBed(design.flow().bedDepth(), softener().resin().beadSize(), PackedBed.DENSE);
    double ratio = inUse().ratioTo(softener().serviceFlow());
    return bed.loss(area().velocityOf(inUse()), Fluid.water(design.home().temperature()))
        .plus(softener().valveLoss().times(ratio * ratio));
  }

  private void hardWater() {
    double risk = limits.reserveRisk() > 0 ? limits.reserveRisk() : BEYOND_DESIGN_DAY;
    share(Margin.OUT_OF_SOFT_WATER, year.runOutShare(), risk + margins.runOutBeyondRisk());
    share(Margin.HARD_WATER_MEAN, year.meanShare(), margins.hardWaterMean());
    share(Margin.HARD_WATER_HIGH, year.highShare(), margins.hardWaterHigh());
  }

  private void share(Margin margin, double share, double most) {
    checks.add(MarginCheck.of(margin, share, most, value -> new Figure.Share(value, 1)));
  }

  private void dosage() {
    WaterAnalysis water = design.home().site().softenedWater();
    boolean harsh =
        water.foundOrNone(Substance.IRON).milligramsPerLitre() >= MUCH_IRON
            || water.foundOrNone(Substance.TOTAL_DISSOLVED_SOLIDS).milligramsPerLitre()
                >= MANY_SOLIDS;
    if (harsh) {
      checks.add(
          MarginCheck.of(
              Margin.LEAN_DOSAGE,
              Candidate.dosage(design.setup().basis()).poundsPerCubicFoot(),
              margins.leanDosage().poundsPerCubicFoot(),
              value -> Figure.of(SaltDosage.ofPoundsPerCubicFoot(value))));
    }
  }
}

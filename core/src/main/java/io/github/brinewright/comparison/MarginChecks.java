package io.github.brinewright.comparison;

import io.github.brinewright.finding.Limits;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Holds one design against the margins, in their order. */
final class MarginChecks {
  /** Share of days that the design day covers, which decides where no risk was chosen. */
  private static final double NINE_OF_TEN = 0.9;

  private final Design design;
  private final Margins margins;
  private final Limits limits;
  private final HardWaterYear year;
  private final FlowRate peak;
  private final FlowRate otherPeak;
  private final List<MarginCheck> checks = new ArrayList<>();

  private MarginChecks(Design design, Margins margins, Limits limits, HardWaterYear year) {
    this.design = design;
    this.margins = margins;
    this.limits = limits;
    this.year = year;
    peak = design.flow().peak();
    otherPeak = OtherPeak.of(design);
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
    boolean twin = softener().arrangement() == Arrangement.TWIN_ALTERNATING;
    days(
        Margin.INTERVAL_MEAN,
        design.year().orElseThrow().daysBetween(),
        twin ? margins.twinDays() : margins.meanDays());
    days(
        Margin.INTERVAL_DESIGN,
        design.schedule().designDays(),
        twin ? margins.twinDays() : margins.designDays());
  }

  private void days(Margin margin, double days, double least) {
    checks.add(MarginCheck.of(margin, days, least, value -> Figure.days(value, 1)));
  }

  private void flow() {
    byPeak(
        flow ->
            MarginCheck.of(
                Margin.PEAK_ABOVE_SERVICE_FLOW,
                flow.gallonsPerMinute(),
                softener().serviceFlow().gallonsPerMinute() * margins.peakShare(),
                value -> Figure.of(FlowRate.ofGallonsPerMinute(value))));
    byPeak(flow -> loading(Margin.AREA_LOADING_SERVICE, inUse(flow), margins.serviceLoading()));
    byPeak(flow -> loading(Margin.AREA_LOADING_PEAK, flow, margins.peakLoading()));
  }

  /** A check by the peak flow; at the worst near, when another way to find that flow keeps it. */
  private void byPeak(Function<FlowRate, MarginCheck> check) {
    MarginCheck own = check.apply(peak);
    checks.add(check.apply(otherPeak).broken() ? own : own.keptByAnotherMethod());
  }

  private MarginCheck loading(Margin margin, FlowRate flow, FlowVelocity most) {
    return MarginCheck.of(
        margin,
        area().velocityOf(flow).gallonsPerMinutePerSquareFoot(),
        most.gallonsPerMinutePerSquareFoot(),
        value -> Figure.of(FlowVelocity.ofGallonsPerMinutePerSquareFoot(value)));
  }

  private Softener softener() {
    return design.softener();
  }

  private Area area() {
    return softener().vessel().area();
  }

  /** A peak flow, as far as the unit is made for it. */
  private FlowRate inUse(FlowRate flow) {
    return flow.min(softener().serviceFlow());
  }

  private void pressure() {
    byPeak(flow -> pressure(Margin.PRESSURE_LOSS, loss(inUse(flow)), margins.pressureLoss()));
    supply()
        .ifPresent(
            supply ->
                byPeak(
                    flow ->
                        pressure(
                            Margin.PRESSURE_LEFT,
                            supply.minus(loss(flow)).max(Pressure.ofPsi(0)),
                            margins.pressureLeft())));
  }

  private Optional<Pressure> supply() {
    return design.home().site().supply().pressureInUse();
  }

  private static MarginCheck pressure(Margin margin, Pressure value, Pressure limit) {
    return MarginCheck.of(margin, value.psi(), limit.psi(), psi -> Figure.of(Pressure.ofPsi(psi)));
  }

  private Pressure loss(FlowRate flow) {
    PackedBed bed =
        new PackedBed(design.flow().bedDepth(), softener().resin().beadSize(), PackedBed.DENSE);
    double ratio = flow.ratioTo(softener().serviceFlow());
    return bed.loss(area().velocityOf(flow), Fluid.water(design.home().temperature()))
        .plus(softener().valveLoss().times(ratio * ratio));
  }

  private void hardWater() {
    share(Margin.OUT_OF_SOFT_WATER, year.runOutShare(), risk() + margins.runOutBeyondRisk());
    share(Margin.HARD_WATER_MEAN, year.meanShare(), margins.hardWaterMean());
    share(Margin.HARD_WATER_HIGH, year.highShare(), margins.hardWaterHigh());
  }

  /** A risk can be chosen for the reserve of a delayed meter; a clock is set for the design day. */
  private double risk() {
    boolean chosen = limits.reserveRisk() > 0 && design.setup().control().metered();
    return chosen ? limits.reserveRisk() : 1 - limits.designUse().orElse(NINE_OF_TEN);
  }

  private void share(Margin margin, double share, double most) {
    checks.add(MarginCheck.of(margin, share, most, value -> new Figure.Share(value, 1)));
  }

  private void dosage() {
    if (Margins.harsh(design.home().site().softenedWater())) {
      checks.add(
          MarginCheck.of(
              Margin.LEAN_DOSAGE,
              Candidate.dosage(design.setup().basis()).poundsPerCubicFoot(),
              margins.leanDosage().poundsPerCubicFoot(),
              value -> Figure.of(SaltDosage.ofPoundsPerCubicFoot(value))));
    }
  }
}

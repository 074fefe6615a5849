package io.github.brinewright.sizing;

import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Control;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CyclePlan;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.units.Concentration;
import io.github.brinewright.units.HardnessAmount;
import io.github.brinewright.water.Substance;
import io.github.brinewright.water.WaterAnalysis;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Works out candidates for one home; the flow through a unit is worked out once for all its
 * settings. May be shared between threads.
 */
public final class Sizer {
  /** Iron from which the longer backwash is chosen: the secondary limit of 40 CFR 143.3. */
  private static final Concentration IRON_BEARING = Concentration.ofMilligramsPerLitre(0.3);

  private final HomeLoad home;
  private final double reserveRisk;
  private final Map<SoftenerUnit, FlowCheck> flows = new ConcurrentHashMap<>();

  /** A sizer for a home; delayed controls hold back one design day. */
  public Sizer(HomeLoad home) {
    this(home, 0);
  }

  /**
   * A sizer for a home.
   *
   * @param reserveRisk share of regenerations in which a delayed control may run out, 0.0001 to
   *     0.5; 0 to hold back one design day
   */
  public Sizer(HomeLoad home, double reserveRisk) {
    this.home = home;
    this.reserveRisk = reserveRisk;
  }

  /** Works out one candidate in full. It may turn out not to be feasible. */
  public Design design(Candidate candidate) {
    SoftenerUnit unit = candidate.unit();
    FlowCheck flow = flows.computeIfAbsent(unit, each -> new FlowCheck(each, home));
    Schedule schedule = schedule(candidate);
    BrineRefill refill = new BrineRefill(candidate.basis(), unit.refillRate(), unit.refillStep());
    Cycle cycle = new Cycle(plan(unit), unit.resinVolume(), flow.drain().chosen(), refill);
    return new Design(
        home,
        candidate,
        schedule,
        refill,
        cycle,
        flow,
        new YearlyUse(schedule, refill, cycle, unit.standby()),
        new Effect(home.removed(), candidate.basis(), refill, cycle));
  }

  private Schedule schedule(Candidate candidate) {
    HardnessAmount usable = candidate.basis().usable();
    if (candidate.control() == Control.CLOCK) {
      return new ClockSchedule(usable, home.dailyLoad(), home.expectedLoad());
    }
    return MeteredSchedule.of(candidate.control(), usable)
        .reserve(reserve(candidate.control()))
        .serving(home.compensatedHardness(), home.softenedDesign(), home.softenedExpected());
  }

  private Reserve reserve(Control control) {
    if (control != Control.METERED_DELAYED) {
      return Reserve.NONE;
    }
    return reserveRisk > 0
        ? Reserve.forRisk(reserveRisk, home.expectedLoad())
        : Reserve.ofDay(home.dailyLoad());
  }

  private CyclePlan plan(SoftenerUnit unit) {
    WaterAnalysis water = home.site().water();
    boolean ironBearing = water.foundOrNone(Substance.IRON).exceeds(IRON_BEARING);
    return unit.plan().orElse(ironBearing ? CyclePlan.IRON_BEARING : CyclePlan.EVERYDAY);
  }
}

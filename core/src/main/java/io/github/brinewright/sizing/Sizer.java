package io.github.brinewright.sizing;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Softener;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Works out setups for one home; the flow through a softener is worked out once for all its
 * settings. May be shared between threads.
 */
public final class Sizer {
  /** Iron from which the longer backwash is chosen: the secondary limit of 40 CFR 143.3. */
  private static final Concentration IRON_BEARING = Concentration.ofMilligramsPerLitre(0.3);

  private final HomeLoad home;
  private final double reserveRisk;
  private final Map<Softener, BedFlow> flows = new ConcurrentHashMap<>();

  /** A sizer for a home; delayed controls hold back one design day. */
  public Sizer(HomeLoad home) {
    this(home, 0);
  }

  /**
   * A sizer for a home.
   *
   * @param reserveRisk share of regenerations in which a delayed control may run out, 0.0001 to
   *     0.5; 0 to hold back one design day
   * @throws IllegalArgumentException outside that range
   */
  public Sizer(HomeLoad home, double reserveRisk) {
    this.home = home;
    this.reserveRisk =
        reserveRisk == 0 ? 0 : DailyVariation.RISK.require("risk of running out", reserveRisk);
  }

  /** Works out one setup in full. It may turn out not to be feasible. */
  public Design design(Setup setup) {
    Softener softener = setup.softener();
    BedFlow flow = flows.computeIfAbsent(softener, each -> new BedFlow(each, home));
    return new Design(home, setup, flow, schedule(setup), plan(softener));
  }

  private Schedule schedule(Setup setup) {
    HardnessAmount usable = setup.basis().usable();
    if (setup.control() == Control.CLOCK) {
      return new ClockSchedule(usable, home.dailyLoad(), home.expectedLoad(), home.variation());
    }
    return MeteredSchedule.of(setup.control(), usable)
        .reserve(reserve(setup.control()))
        .variation(home.variation())
        .serving(home.compensatedHardness(), home.softenedDesign(), home.softenedExpected());
  }

  private Reserve reserve(Control control) {
    if (control != Control.METERED_AT_NIGHT) {
      return Reserve.NONE;
    }
    Hardness hardness = home.compensatedHardness();
    return reserveRisk > 0
        ? Reserve.forRisk(reserveRisk, home.variation(), home.softenedExpected(), hardness)
        : Reserve.ofDay(home.softenedDesign(), hardness);
  }

  private CyclePlan plan(Softener softener) {
    WaterAnalysis water = home.site().water();
    boolean ironBearing = water.foundOrNone(Substance.IRON).exceeds(IRON_BEARING);
    return softener.plan().orElse(ironBearing ? CyclePlan.IRON_BEARING : CyclePlan.EVERYDAY);
  }
}

package io.github.brinewright.simulation;

import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the mean year of a bed comes to without simulating it: regenerations, and hard water by
 * cause. It describes the beds of {@link YearSimulation}: a day begins at the hour at which a clock
 * and a delayed meter regenerate, a meter that regenerates at once does so while water is drawn,
 * and any meter after its longest interval.
 *
 * <p>Clock: with S the use of the interval and c what the bed holds, E[(S − c)⁺] passes hard. Meter
 * at night: Σ P(S(n) &lt; s) days from one regeneration to the next and Σ E[(S(n+1) − c)⁺; S(n)
 * &lt; s] hard, with the set volume s. Meter at once: one regeneration for each set volume. A meter
 * set to more than the bed holds lets E[(S(N) − c)⁺] − E[(S(N) − s)⁺] pass hard besides, N being
 * the longest interval. S is taken as gamma distributed; correlation and weekdays enter its
 * variance. Besides, a share of the day passes hard in each regeneration. Example: 850 of 1,000 gal
 * at 100 gal a day by night → 40.1 regenerations, 62 gal from running out and 31 while regenerating
 * in 1.25 hours. Source: renewal theory (Cox, 1962); gamma sums; open meter data for the hours
 * (DAIAD, CC BY-SA 4.0).
 *
 * <p>Accuracy, found against the simulation over random homes (coefficient of variation 0.32-0.70,
 * correlation 0-0.3, weekends up to 1.25 of a day, up to 60 days away and 40 with guests, beds of
 * 1.2-20 mean days, reserves of 0-3): regenerations to 1 %, water while regenerating to 2 %,
 * running out to 4 % and 0.02 % of the year's use; twice that where a meter is set to less than 1.5
 * or more than 9 mean days. Beds as somebody set them by guess, on weekdays, at any hour of the
 * day, or with a meter set to up to three times what they hold, are forecast as well; but the
 * running out of a meter that regenerates at once, set to more than the bed holds and to more than
 * half of its longest interval, only to 20 %. Days away and with guests that fall within one
 * longest interval of a meter are counted as if all of it were so: too much rather than too little
 * runs out, up to twice where it is set to more than 9 mean days. A meter set to less than what is
 * used on its longest interval away, 0.28 of a mean day, is due on days away too, which is not
 * counted.
 *
 * <p>Safe for use by several threads.
 */
public final class HardWaterForecast {
  private static final int LONGEST = 99;

  private final DemandModel demand;
  private final DayMoments moments;
  private final Stretches stretches;
  private final Map<Clock, ClockForecast> clocks = new ConcurrentHashMap<>();
  private final Map<Integer, IntervalEnds> ends = new ConcurrentHashMap<>();

  private record Clock(int days, Set<DayOfWeek> weekdays) {}

  private HardWaterForecast(DemandModel demand) {
    this.demand = demand;
    moments = new DayMoments(demand.variation());
    stretches = Stretches.of(demand.days());
  }

  /**
   * {@return the forecast of a home; keep it for all beds that are compared there}
   *
   * @param demand what passes the softener
   */
  public static HardWaterForecast of(DemandModel demand) {
    return new HardWaterForecast(demand);
  }

  /**
   * {@return the year of a bed at the stated mean use}
   *
   * @param bed with a longest interval of 1 to 99 days
   * @throws IllegalArgumentException outside that range
   */
  public HardWater year(BedSettings bed) {
    return yearAt(bed, 1);
  }

  /**
   * {@return the year of a bed in a home that uses more or less than stated}
   *
   * @param bed with a longest interval of 1 to 99 days
   * @param multiple of the stated mean; 0.01 to 100; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public HardWater yearAt(BedSettings bed, double multiple) {
    return tally(bed, Require.between("multiple of the mean use", multiple, 0.01, 100)).inGallons();
  }

  /**
   * {@return the mean over homes whose own mean use is known only so well; the share of
   * regenerations after running out is that of all their regenerations}
   *
   * @param bed with a longest interval of 1 to 99 days
   * @param uncertain how far the mean of a home may be from the stated one
   */
  public HardWater meanYear(BedSettings bed, UncertainMean uncertain) {
    YearTally sum = YearTally.NONE;
    for (UncertainMean.Draw draw : uncertain.draws()) {
      sum = sum.plus(tally(bed, draw.multiple()).times(draw.weight()));
    }
    return sum.inGallons();
  }

  /**
   * {@return the share of all these homes' regenerations that come after the bed has run out: the
   * same as that of {@link #meanYear} to half a point, but much faster}
   *
   * @param bed with a longest interval of 1 to 99 days
   * @param uncertain how far the mean of a home may be from the stated one
   */
  public double runOutShare(BedSettings bed, UncertainMean uncertain) {
    if (bed.control() == Control.METERED_AT_ONCE && bed.set().compareTo(bed.capacity()) <= 0) {
      return 0;
    }
    return bed.control() == Control.CLOCK
        ? shareOfClock(bed, uncertain)
        : meanYear(bed, uncertain).runOutShare();
  }

  /** A clock regenerates as often in every home. */
  private double shareOfClock(BedSettings bed, UncertainMean uncertain) {
    Require.between("longest interval", bed.days(), 1, LONGEST);
    IntervalEnds home =
        ends.computeIfAbsent(bed.days(), days -> new IntervalEnds(days, moments, stretches));
    double capacity = bed.capacity().ratioTo(demand.mean());
    double hardShare = HourlyShare.during(bed);
    return uncertain.mean(multiple -> home.runOutShare(capacity / multiple, hardShare));
  }

  private YearTally tally(BedSettings bed, double multiple) {
    Require.between("longest interval", bed.days(), 1, LONGEST);
    double mean = demand.mean().gallons() * multiple;
    MeterSetting setting =
        new MeterSetting(
            bed.capacity().gallons() / mean, bed.set().gallons() / mean, HourlyShare.during(bed));
    YearTally inMeanDays =
        switch (bed.control()) {
          case CLOCK, WEEKDAYS -> clock(bed).year(setting.capacity(), setting.hardShare());
          case METERED_AT_NIGHT -> MeteredYear.of(night(bed.days(), setting), stretches);
          case METERED_AT_ONCE -> MeteredYear.of(atOnce(bed.days(), setting), stretches);
        };
    return inMeanDays.volumesTimes(mean);
  }

  private ClockForecast clock(BedSettings bed) {
    return clocks.computeIfAbsent(
        new Clock(bed.days(), bed.weekdays()),
        clock ->
            clock.weekdays().isEmpty()
                ? ClockForecast.every(clock.days(), moments, stretches)
                : ClockForecast.on(clock.weekdays(), moments, stretches));
  }

  private Meter night(int longest, MeterSetting setting) {
    return new NightMeter(moments, table(longest), setting);
  }

  private Meter atOnce(int longest, MeterSetting setting) {
    return new AtOnceMeter(moments, table(longest), table(longest + 1), setting);
  }

  private ReachingTable table(int longest) {
    return ReachingTable.of(demand.variation(), longest);
  }
}

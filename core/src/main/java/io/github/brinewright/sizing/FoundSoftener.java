package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The softener that is already in the house, worked out at its home: what its bed holds with the
 * salt it is given, what a regeneration takes, and when one starts. Immutable.
 *
 * <p>Usable capacity = design factor × share left at its age × curve(salt ÷ volume) × volume, in
 * cold water less. Salt above the curve gives what its upper end gives; salt below it more than in
 * proportion, less than its lower end, and no more than chemistry allows. Source: the resin's
 * curve; common practice.
 */
public final class FoundSoftener {
  /** Id of the bed in a price list of its own. */
  public static final String ID = "present";

  private static final int NO_LONGEST_DAYS = 99;
  private static final int DAYS_OF_WEEK = DayOfWeek.values().length;
  private static final Volume LEAST = Volume.ofGallons(1e-3);

  /** Mean days of use from the volume as set to the night, by renewal theory: (1 + 0.46²) ÷ 2. */
  private static final double MEAN_EXCESS = 0.6;

  private final PresentSoftener present;
  private final HomeLoad home;
  private final Sizer sizer;
  private final FoundBed bed;
  private final FoundCapacity capacity;
  private final Optional<FoundMeter> meter;
  private final FoundSalt salt;
  private final Softener softener;
  private final List<Assumption> assumptions;

  private FoundSoftener(PresentSoftener present, HomeLoad home) {
    this.present = present;
    this.home = home;
    sizer = new Sizer(home);
    bed = new FoundBed(present);
    capacity = new FoundCapacity(bed, present.ageYears().orElse(0), sizer.shareInColdWater());
    FoundSalt set = new FoundSalt(present, bed.volume(), home.site().brineTankTemperature());
    meter = meter(set);
    salt = set.orBought(this::regenerationsAYear);
    softener = with(Set.of(control()), List.of(capacity.nearest(dosage())));
    assumptions = assumed();
  }

  /**
   * {@return the present softener of a home}
   *
   * @param present as the visit found it
   * @param home what the home asks for
   */
  public static FoundSoftener of(PresentSoftener present, HomeLoad home) {
    return new FoundSoftener(present, home);
  }

  private Optional<FoundMeter> meter(FoundSalt set) {
    return present.control() instanceof PresentControl.Metered metered
        ? Optional.of(new FoundMeter(metered, hardness -> rightlyTold(metered, hardness, set)))
        : Optional.empty();
  }

  /**
   * The capacity that a meter is taken to be told where nobody read it, so that nothing is blamed
   * on it: what the bed holds, and by night, unless a reserve was found besides, a day's load less;
   * at least twice a reserve that was found.
   */
  private HardnessAmount rightlyTold(PresentControl.Metered metered, Hardness told, FoundSalt set) {
    FoundUnknowns middle = FoundUnknowns.MIDDLE;
    HardnessAmount holds = capacity.usable(set.dosage(middle.salt()), middle);
    HardnessAmount rest = holds.minus(home.dailyLoad());
    boolean keepsADay = !metered.atOnce() && metered.reserve().isEmpty() && rest.isPositive();
    Volume reserve = metered.reserve().orElse(Volume.ofGallons(0));
    return (keepsADay ? rest : holds).max(told.in(reserve).times(2));
  }

  private double regenerationsAYear() {
    Volume meanDay = home.softenedYear().dividedBy(CalendarYear.DAYS);
    return CalendarYear.DAYS * regenerationsADay(meanDay, home.softenedExpected());
  }

  /** How often it regenerates where so much passes the bed on a mean day and on one at home. */
  double regenerationsADay(Volume meanDay, Volume dayAtHome) {
    if (present.control() instanceof PresentControl.Clock clock) {
      return 1.0 / clock.days();
    } else if (present.control() instanceof PresentControl.Weekdays weekdays) {
      return (double) weekdays.days().size() / DAYS_OF_WEEK;
    }
    Volume passed = starts().plus(dayAtHome.times(daysUntilNight())).max(LEAST);
    return Math.max(meanDay.ratioTo(passed), 1.0 / longestDays());
  }

  /** Mean days of use that a meter still waits for the night. */
  double daysUntilNight() {
    return atOnce() ? 0 : MEAN_EXCESS;
  }

  private boolean atOnce() {
    return present.control() instanceof PresentControl.Metered metered && metered.atOnce();
  }

  private Volume starts() {
    return meter.orElseThrow().starts();
  }

  /** {@return what was found} */
  public PresentSoftener present() {
    return present;
  }

  /** {@return what sets off its regenerations} */
  public Control control() {
    if (meter.isPresent()) {
      return atOnce() ? Control.METERED_AT_ONCE : Control.METERED_AT_NIGHT;
    }
    return present.control() instanceof PresentControl.Weekdays ? Control.WEEKDAYS : Control.CLOCK;
  }

  /** {@return the volume of its bed, known or assumed} */
  public Volume resinVolume() {
    return bed.volume();
  }

  /** {@return its bed with the salt nearest to that found on the curve of its resin} */
  public Softener softener() {
    return softener;
  }

  /**
   * {@return the same bed with other controls and other salt, to be set right}
   *
   * @param controls that it may have
   * @param dosages that it may be set to, within the curve of its resin
   */
  public Softener with(Set<Control> controls, List<SaltDosage> dosages) {
    return Softener.withResin(ID, bed.volume())
        .vessel(bed.vessel())
        .resin(bed.resin())
        .refill(salt.flow(), Minutes.toDuration(1))
        .designFactor(capacity.designFactor(AgeLoss.USUAL))
        .dosages(dosages)
        .controls(controls)
        .regenerant(present.regenerant())
        .build();
  }

  /** {@return the curve of its resin} */
  public CapacityCurve curve() {
    return capacity.curve();
  }

  /** {@return the salt of a regeneration as sodium chloride; it may lie outside any curve} */
  public SaltDosage dosage() {
    return salt.dosage(FoundUnknowns.MIDDLE.salt());
  }

  /** {@return whether setting or purchases tell the salt of a regeneration} */
  public boolean saltKnown() {
    return salt.known();
  }

  /** {@return the salt of a regeneration, of the kind that is used} */
  public Mass saltPerRegeneration() {
    return salt.at(FoundUnknowns.MIDDLE.salt());
  }

  /** {@return the refill that gives that salt} */
  public BrineRefill refill() {
    return salt.refillAt(FoundUnknowns.MIDDLE.salt());
  }

  /** {@return the steps of a regeneration, with the usual minutes} */
  public Cycle cycle() {
    return sizer.cycle(softener, refill());
  }

  /** {@return what the bed holds between two regenerations} */
  public HardnessAmount usable() {
    return usable(FoundUnknowns.MIDDLE);
  }

  /** {@return the range of what it holds, by its age and, where not known, its salt} */
  public Range<HardnessAmount> usableRange() {
    return new Range<>(usable(FoundUnknowns.at(1, 0)), usable(FoundUnknowns.at(0, 1)));
  }

  /**
   * {@return what it holds in one draw of what is not known}
   *
   * @param draw of age and salt
   */
  public HardnessAmount usable(FoundUnknowns draw) {
    return capacity.usable(salt.dosage(draw.salt()), draw);
  }

  /**
   * {@return what one draw of its age leaves of the capacity that is reckoned with; dimensionless}
   *
   * @param draw of age
   */
  public double shareOfMiddle(FoundUnknowns draw) {
    return capacity.designFactor(draw.lossAYear()) / capacity.designFactor(AgeLoss.USUAL);
  }

  /** {@return the volume that starts a regeneration of a meter; empty for a clock} */
  public Optional<Volume> startsAfter() {
    return meter.map(FoundMeter::starts);
  }

  /** {@return the volume that a meter is set to, before its own reserve; empty for a clock} */
  public Optional<Volume> setVolume() {
    return meter.map(FoundMeter::set);
  }

  /** {@return the days after which it regenerates in any case; 99 where none are set} */
  public int longestDays() {
    if (present.control() instanceof PresentControl.Clock clock) {
      return clock.days();
    } else if (present.control() instanceof PresentControl.Metered metered) {
      return metered.longestDays().orElse(NO_LONGEST_DAYS);
    }
    return DAYS_OF_WEEK;
  }

  /**
   * {@return the days from one regeneration to the next at full use, as it is set: those of a
   * clock, the longest gap between weekdays, or the volume of a meter ÷ design use}
   */
  public double designDays() {
    if (present.control() instanceof PresentControl.Weekdays weekdays) {
      return new WeekdayClock(weekdays.days()).longestGap();
    }
    return startsAfter()
        .map(volume -> Math.min(volume.ratioTo(home.softenedDesign()), longestDays()))
        .orElse((double) longestDays());
  }

  /** {@return the bed as it is set, as the day-by-day simulation needs it} */
  public BedSettings settings() {
    return settings(FoundUnknowns.MIDDLE);
  }

  /**
   * {@return the same in one draw of what is not known}
   *
   * @param draw of age and salt
   */
  public BedSettings settings(FoundUnknowns draw) {
    BrineRefill refill = salt.refillAt(draw.salt());
    Cycle cycle = sizer.cycle(softener, refill);
    Volume holds = usable(draw).asWaterOf(home.compensatedHardness()).max(LEAST);
    return new BedSettings(
        control(),
        holds,
        startsAfter().orElse(holds),
        longestDays(),
        present.control() instanceof PresentControl.Weekdays weekly ? weekly.days() : Set.of(),
        refill.saltGiven(),
        cycle.water(),
        Sizer.hours(cycle),
        present.hour().orElse(BedSettings.USUAL_HOUR));
  }

  /** {@return what is taken as so, because it was not found} */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  private List<Assumption> assumed() {
    List<Assumption> all = new ArrayList<>(bed.assumptions());
    all.add(age());
    all.addAll(salt.assumptions());
    meter.map(FoundMeter::assumptions).ifPresent(all::addAll);
    if (!curve().covers(dosage())) {
      all.add(
          Assumption.of(
              AssumptionKind.DOSAGE_OUTSIDE_CURVE,
              Figure.of(dosage()),
              Figure.of(capacity.nearest(dosage()))));
    }
    all.add(Assumption.of(AssumptionKind.CYCLE_USUAL, Figure.of(cycle().time(), 0)));
    if (present.hour().isEmpty() && control() != Control.METERED_AT_ONCE) {
      all.add(Assumption.of(AssumptionKind.HOUR_USUAL));
    }
    return List.copyOf(all);
  }

  private Assumption age() {
    if (present.ageYears().isEmpty()) {
      return Assumption.of(AssumptionKind.AGE_NOT_KNOWN);
    }
    int years = present.ageYears().getAsInt();
    return Assumption.of(
        AssumptionKind.AGE_LOSS,
        Figure.of(years),
        Figure.percent(AgeLoss.left(years, AgeLoss.USUAL)),
        Figure.percent(AgeLoss.left(years, AgeLoss.MOST_A_YEAR)),
        Figure.percent(AgeLoss.left(years, AgeLoss.LEAST_A_YEAR)));
  }

  @Override
  public String toString() {
    return present + " at " + home.site();
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The softener that is already in the house, worked out at its home: what its bed holds with the
 * salt it is given, what a regeneration takes, and when one starts. Immutable.
 *
 * <p>Usable capacity = design factor × share left at its age × curve(salt ÷ volume) × volume. Salt
 * above the curve gives what its upper end gives; salt below it, something between its lower end
 * and that end in proportion to the salt. Source: the resin's curve; common practice.
 */
public final class FoundSoftener {
  /** Id of the bed in a price list of its own. */
  public static final String ID = "present";

  private static final int NO_LONGEST_DAYS = 99;
  private static final double LEAST_GALLONS = 1e-3;

  private final PresentSoftener present;
  private final HomeLoad home;
  private final Sizer sizer;
  private final FoundBed bed;
  private final Optional<FoundMeter> meter;
  private final FoundSalt salt;
  private final Softener softener;
  private final List<Assumption> assumptions;

  private FoundSoftener(PresentSoftener present, HomeLoad home) {
    this.present = present;
    this.home = home;
    sizer = new Sizer(home);
    bed = new FoundBed(present);
    meter =
        present.control() instanceof PresentControl.Metered metered
            ? Optional.of(new FoundMeter(metered, present, bed.volume()))
            : Optional.empty();
    salt =
        new FoundSalt(
            present, bed.volume(), home.site().brineTankTemperature(), this::regenerationsAYear);
    softener = with(Set.of(control()), List.of(nearest(dosage())));
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

  private double regenerationsAYear() {
    if (present.control() instanceof PresentControl.Clock clock) {
      return (double) CalendarYear.DAYS / clock.days();
    } else if (present.control() instanceof PresentControl.Weekdays weekdays) {
      return CalendarYear.DAYS / 7.0 * weekdays.days().size();
    }
    Volume night = atOnce() ? Volume.ofGallons(0) : home.softenedExpected().times(0.5);
    double often = home.softenedYear().ratioTo(starts().plus(night).max(Volume.ofGallons(1)));
    return Math.max(often, (double) CalendarYear.DAYS / longestDays());
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
        .designFactor(designFactor(AgeLoss.USUAL))
        .dosages(dosages)
        .controls(controls)
        .regenerant(present.regenerant())
        .build();
  }

  private double designFactor(double lossAYear) {
    int years = present.ageYears().orElse(0);
    return DosageCurveBasis.USUAL_DESIGN_FACTOR * AgeLoss.left(years, lossAYear);
  }

  /** {@return the curve of its resin} */
  public CapacityCurve curve() {
    return bed.resin().curve();
  }

  private SaltDosage nearest(SaltDosage dosage) {
    return curve().dosages().nearest(dosage);
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
    SaltDosage given = salt.dosage(draw.salt());
    SaltDosage onCurve = nearest(given);
    double below = Math.min(1, given.ratioTo(onCurve));
    double share = below + draw.salt() * (1 - below);
    return curve()
        .at(onCurve)
        .of(bed.volume())
        .times(designFactor(draw.lossAYear()) * share * sizer.shareInColdWater());
  }

  /**
   * {@return what one draw of its age leaves of the capacity that is reckoned with; dimensionless}
   *
   * @param draw of age
   */
  public double shareOfMiddle(FoundUnknowns draw) {
    return designFactor(draw.lossAYear()) / designFactor(AgeLoss.USUAL);
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
    return 7;
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
    Volume capacity =
        usable(draw).asWaterOf(home.compensatedHardness()).max(Volume.ofGallons(LEAST_GALLONS));
    return new BedSettings(
        control(),
        capacity,
        startsAfter().orElse(capacity),
        longestDays(),
        present.control() instanceof PresentControl.Weekdays weekly ? weekly.days() : Set.of(),
        refill.saltGiven(),
        cycle.water(),
        Sizer.hours(cycle),
        present.hour().orElse(BedSettings.USUAL_HOUR));
  }

  /** {@return what the curve of its resin says of the salt nearest to that found} */
  public ResinCapacity capacityOfCurve() {
    return curve().at(nearest(dosage()));
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
              Figure.of(nearest(dosage()))));
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

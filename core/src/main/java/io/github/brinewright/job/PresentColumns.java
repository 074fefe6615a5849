package io.github.brinewright.job;

import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Clock;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.home.PresentControl.Weekdays;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSalt.Dosed;
import io.github.brinewright.home.PresentSalt.EachTime;
import io.github.brinewright.home.PresentSalt.Refill;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** The columns of sites.csv that speak of the softener that is already in the house. */
final class PresentColumns {
  static final String PART = "present";

  /** A word for a meter that does not say when it regenerates: at night, as most do. */
  private static final Map<String, Control> ALSO = Map.of("metered", Control.METERED_AT_NIGHT);

  private PresentColumns() {}

  static Columns<SiteDraft, QuotedHome> add(Columns<SiteDraft, QuotedHome> columns) {
    return tested(salt(bed(meter(clock(columns.part(PART))))));
  }

  private static Columns<SiteDraft, QuotedHome> clock(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(
            Typed.choice("present_control", Control.class, ALSO),
            (draft, control) -> draft.present.control = control,
            ofControl(control -> Optional.of(kind(control))))
        .add(
            Typed.whole("present_regeneration_hour", PresentSoftener.HOUR).unit("h"),
            (draft, hour) -> draft.present.softener(softener -> softener.hour(hour)),
            of(softener -> boxed(softener.hour())))
        .add(
            Typed.whole("present_days", PresentControl.DAYS).unit("days"),
            (draft, days) -> draft.present.days = days,
            ofControl(PresentColumns::days))
        .add(
            Typed.weekdays("present_weekdays"),
            (draft, days) -> draft.present.weekdays = days,
            ofControl(control -> only(control, Weekdays.class).map(Weekdays::days)));
  }

  private static Columns<SiteDraft, QuotedHome> meter(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(
            Measures.gallons("present_volume_gal", PresentControl.SET_VOLUME),
            (draft, volume) -> draft.present.setVolume = volume,
            ofControl(control -> only(control, ByVolume.class).map(ByVolume::set)))
        .add(
            Measures.gpg("present_set_hardness_gpg", PresentControl.SET_HARDNESS),
            (draft, hardness) -> draft.present.setHardness = hardness,
            ofControl(control -> only(control, ByHardness.class).map(ByHardness::hardness)))
        .add(
            Measures.grains("present_set_capacity_grains", PresentControl.SET_CAPACITY),
            (draft, capacity) -> draft.present.setCapacity = capacity,
            ofControl(control -> only(control, ByHardness.class).flatMap(ByHardness::capacity)))
        .add(
            Measures.gallons("present_reserve_gal", PresentControl.RESERVE),
            (draft, reserve) -> draft.present.reserve = reserve,
            ofControl(control -> only(control, Metered.class).flatMap(Metered::reserve)));
  }

  private static Columns<SiteDraft, QuotedHome> bed(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(
            Measures.grains("present_rated_grains", PresentSoftener.RATING),
            (draft, rated) -> draft.present.softener(softener -> softener.rated(rated)),
            of(PresentSoftener::rated))
        .add(
            Measures.cubicFeet("present_resin_ft3", Softener.RESIN_VOLUME),
            (draft, volume) -> draft.present.softener(softener -> softener.resinVolume(volume)),
            of(PresentSoftener::resinVolume))
        .add(
            Measures.inches("present_vessel_diameter_in", Vessel.SIDE),
            (draft, diameter) -> draft.present.vesselDiameter = diameter,
            of(softener -> softener.vessel().map(Vessel::diameter)))
        .add(
            Measures.inches("present_vessel_height_in", Vessel.SIDE),
            (draft, height) -> draft.present.vesselHeight = height,
            of(softener -> softener.vessel().map(Vessel::height)))
        .add(
            Typed.reference("present_resin_id"),
            (draft, id) -> draft.present.resinId = id,
            of(softener -> softener.resin().map(Resin::id)))
        .add(
            Typed.whole("present_age_years", PresentSoftener.AGE_YEARS).unit("years"),
            (draft, years) -> draft.present.softener(softener -> softener.ageYears(years)),
            of(softener -> boxed(softener.ageYears())));
  }

  private static Columns<SiteDraft, QuotedHome> salt(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(
            Typed.number(
                    "present_dosage_lb_per_ft3",
                    CapacityCurve.DOSAGE,
                    SaltDosage::ofPoundsPerCubicFoot,
                    SaltDosage::poundsPerCubicFoot)
                .unit("lb/ft³"),
            (draft, dosage) -> draft.present.dosage = dosage,
            ofSalt(salt -> only(salt, Dosed.class).map(Dosed::dosage)))
        .add(
            Measures.pounds("present_salt_lb", PresentSalt.EACH_TIME),
            (draft, salt) -> draft.present.salt = salt,
            ofSalt(salt -> only(salt, EachTime.class).map(EachTime::salt)))
        .add(
            Measures.minutes("present_refill_min", PresentSalt.REFILL),
            (draft, time) -> draft.present.refill = time,
            ofSalt(salt -> only(salt, Refill.class).map(Refill::time)))
        .add(
            Measures.gpm("present_refill_gpm", Softener.REFILL_RATE),
            (draft, flow) -> draft.present.refillFlow = flow,
            ofSalt(salt -> only(salt, Refill.class).flatMap(Refill::flow)))
        .add(
            Typed.choice("present_regenerant", Regenerant.class).usual(Regenerant.SODIUM_CHLORIDE),
            (draft, kind) -> draft.present.softener(softener -> softener.regenerant(kind)),
            of(softener -> Optional.of(softener.regenerant())));
  }

  private static Columns<SiteDraft, QuotedHome> tested(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(
            Measures.pounds("present_salt_bought_lb_per_year", PresentSoftener.SALT_BOUGHT),
            (draft, salt) -> draft.present.softener(softener -> softener.saltBought(salt)),
            of(PresentSoftener::saltBought))
        .add(
            Measures.gpg("present_hardness_after_gpg", PresentSoftener.HARDNESS_AFTER),
            (draft, after) -> draft.present.softener(softener -> softener.hardnessAfter(after)),
            of(PresentSoftener::hardnessAfter))
        .add(
            Typed.readings("present_readings", MeterReading.COUNTER).unit("gal"),
            (draft, readings) -> draft.present.readings = readings,
            of(softener -> Optional.of(softener.readings()).filter(all -> !all.isEmpty())))
        .add(
            Typed.choice("present_read_meter", ReadMeter.class).usual(ReadMeter.SOFTENER),
            (draft, meter) -> draft.present.readMeter = meter,
            of(
                softener ->
                    Optional.of(softener.readMeter())
                        .filter(any -> !softener.readings().isEmpty())));
  }

  private static Control kind(PresentControl control) {
    if (control instanceof Metered meter) {
      return meter.atOnce() ? Control.METERED_AT_ONCE : Control.METERED_AT_NIGHT;
    }
    return control instanceof Clock ? Control.CLOCK : Control.WEEKDAYS;
  }

  private static Optional<Integer> days(PresentControl control) {
    return only(control, Clock.class)
        .map(Clock::days)
        .or(() -> only(control, Metered.class).flatMap(Metered::longestDays));
  }

  private static Optional<Integer> boxed(OptionalInt number) {
    return number.stream().boxed().findFirst();
  }

  private static <T> Optional<T> only(Object any, Class<T> kind) {
    return Optional.of(any).filter(kind::isInstance).map(kind::cast);
  }

  private static <T> Function<QuotedHome, Optional<T>> of(
      Function<PresentSoftener, Optional<T>> get) {
    return home -> home.site().present().flatMap(get);
  }

  private static <T> Function<QuotedHome, Optional<T>> ofControl(
      Function<PresentControl, Optional<T>> get) {
    return of(softener -> get.apply(softener.control()));
  }

  private static <T> Function<QuotedHome, Optional<T>> ofSalt(
      Function<PresentSalt, Optional<T>> get) {
    return of(softener -> softener.salt().flatMap(get));
  }
}

package io.github.brinewright.exchange;

import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSalt.Dosed;
import io.github.brinewright.home.PresentSalt.EachTime;
import io.github.brinewright.home.PresentSalt.Refill;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Resin;
import java.time.DayOfWeek;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a present softener: what was found, null where that is not known, and what was
 * worked out from it.
 */
final class PresentFields {
  private final FoundSoftener found;
  private final PresentSoftener present;

  private PresentFields(FoundSoftener found) {
    this.found = found;
    present = found.present();
  }

  static Map<String, @Nullable Object> of(FoundSoftener found) {
    return new PresentFields(found).all();
  }

  private Map<String, @Nullable Object> all() {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("control", CandidateFields.name(found.control()));
    fields.put("setting", setting());
    fields.put("bed", bed());
    fields.put("salt", salt());
    fields.put("hardnessAfterGpg", number(present.hardnessAfter(), Hardness::grainsPerGallon));
    fields.put("readMeter", readMeter());
    fields.put("readings", present.readings().stream().map(PresentFields::reading).toList());
    fields.put("workedOut", workedOut());
    return fields;
  }

  private Map<String, @Nullable Object> setting() {
    PresentControl control = present.control();
    Optional<ByVolume> byVolume = as(ByVolume.class, control);
    Optional<ByHardness> told = as(ByHardness.class, control);
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("days", days(control).orElse(null));
    fields.put("weekdays", weekdays(control));
    fields.put("volumeGal", number(byVolume.map(ByVolume::set), Volume::gallons));
    fields.put("hardnessGpg", number(told.map(ByHardness::hardness), Hardness::grainsPerGallon));
    fields.put(
        "capacityGrains", number(told.flatMap(ByHardness::capacity), HardnessAmount::grains));
    fields.put(
        "reserveGal",
        number(as(Metered.class, control).flatMap(Metered::reserve), Volume::gallons));
    fields.put("hour", whole(present.hour()));
    return fields;
  }

  /** Days of a clock; of a meter those after which it regenerates in any case. */
  static Optional<Integer> days(PresentControl control) {
    return as(PresentControl.Clock.class, control)
        .map(PresentControl.Clock::days)
        .or(() -> as(Metered.class, control).flatMap(Metered::longestDays));
  }

  private static @Nullable Object weekdays(PresentControl control) {
    return as(PresentControl.Weekdays.class, control).map(each -> names(each.days())).orElse(null);
  }

  /** Days of the week as files name them. */
  static List<String> names(Collection<DayOfWeek> days) {
    return days.stream().sorted().map(WeekdayClock::code).toList();
  }

  private Map<String, @Nullable Object> bed() {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("ratedGrains", number(present.rated(), HardnessAmount::grains));
    fields.put("resinFt3", number(present.resinVolume(), Volume::cubicFeet));
    fields.put("vesselDiameterIn", number(present.vessel(), each -> each.diameter().inches()));
    fields.put("vesselHeightIn", number(present.vessel(), each -> each.height().inches()));
    fields.put("resinId", present.resin().map(Resin::id).orElse(null));
    fields.put("ageYears", whole(present.ageYears()));
    return fields;
  }

  private Map<String, @Nullable Object> salt() {
    PresentSalt set = present.salt().orElse(null);
    Optional<Refill> refill = as(Refill.class, set);
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("regenerant", CandidateFields.name(present.regenerant()));
    fields.put(
        "dosageLbPerFt3", number(as(Dosed.class, set), each -> each.dosage().poundsPerCubicFoot()));
    fields.put("perRegenerationLb", number(as(EachTime.class, set), each -> each.salt().pounds()));
    fields.put("refillMinutes", number(refill, each -> Minutes.of(each.time())));
    fields.put("refillGpm", number(refill.flatMap(Refill::flow), FlowRate::gallonsPerMinute));
    fields.put("boughtLbPerYear", number(present.saltBought(), Mass::pounds));
    return fields;
  }

  private @Nullable Object readMeter() {
    return present.readings().isEmpty() ? null : CandidateFields.name(present.readMeter());
  }

  private static Map<String, Object> reading(MeterReading reading) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("date", reading.date().toString());
    fields.put("counterGal", Numbers.of(reading.counter().gallons()));
    return fields;
  }

  private Map<String, @Nullable Object> workedOut() {
    Range<HardnessAmount> range = found.usableRange();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("resinFt3", Numbers.of(found.resinVolume().cubicFeet()));
    fields.put("resinId", found.softener().resin().id());
    fields.put("usableCapacityGrains", Numbers.of(found.usable().grains()));
    fields.put("usableCapacityGrainsLow", Numbers.of(range.low().grains()));
    fields.put("usableCapacityGrainsHigh", Numbers.of(range.high().grains()));
    fields.put("saltKnown", found.saltKnown());
    return fields;
  }

  private static <T> Optional<T> as(Class<T> type, @Nullable Object value) {
    return Optional.ofNullable(value).filter(type::isInstance).map(type::cast);
  }

  private static <T> @Nullable Object number(Optional<T> value, ToDoubleFunction<T> unit) {
    return value.map(each -> Numbers.of(unit.applyAsDouble(each))).orElse(null);
  }

  private static @Nullable Object whole(OptionalInt value) {
    return value.isPresent() ? value.getAsInt() : null;
  }
}

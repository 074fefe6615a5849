package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** The fields of one way to go on with a present softener. */
final class OptionFields {
  private final ServiceStudy study;
  private final ServiceOption option;
  private final Map<String, @Nullable Object> fields = new LinkedHashMap<>();

  OptionFields(ServiceStudy study, ServiceOption option) {
    this.study = study;
    this.option = option;
  }

  Map<String, @Nullable Object> all() {
    Optional<Candidate> unit = option.candidate().filter(each -> option.kind() == Kind.REPLACED);
    fields.put("unitId", unit.map(each -> each.softener().id()).orElse(null));
    fields.put("unitName", unit.map(each -> each.softener().name()).orElse(null));
    fields.put("settings", settings());
    use();
    hardWater();
    fields.put("unusedCapacityShare", Numbers.of(option.years().unusedShare()));
    cost();
    payback("", option.payback());
    payback("AgainstFound", option.paybackAgainstFound());
    return fields;
  }

  private void put(String name, double value) {
    fields.put(name, Numbers.of(value));
  }

  private void use() {
    put("daysBetweenRegenerations", option.daysBetweenRegenerations());
    put("regenerationsPerYear", option.years().regenerations().mean());
    put("saltPerRegenerationLb", option.saltPerRegeneration().pounds());
    spread("saltPerYearLb", option.saltPounds());
    spread("waterPerYearGal", option.waterGallons());
  }

  private void hardWater() {
    Volume day = study.comparison().home().softenedExpected();
    spread("hardWaterGalPerYear", option.hardGallons());
    put("hardWaterDaysPerYear", option.hardWater().daysOf(day));
    spread("runOutDaysPerYear", option.runOutDays());
  }

  private void spread(String name, Spread spread) {
    put(name, spread.mean());
    put(name + "Low", spread.low());
    put(name + "High", spread.high());
  }

  private void cost() {
    Map<String, Object> lines = new LinkedHashMap<>();
    option
        .costLines()
        .forEach((kind, money) -> lines.put(CandidateFields.name(kind), money.getAmount()));
    lines.put("total", option.cost().getAmount());
    fields.put("costPerYear", lines);
    fields.put("costPerYearLow", amount(option.costs().low()));
    fields.put("costPerYearHigh", amount(option.costs().high()));
    fields.put(
        "price",
        option
            .price()
            .flatMap(price -> option.candidate())
            .map(CandidateFields::price)
            .orElse(null));
  }

  private BigDecimal amount(double units) {
    CurrencyUnit currency = option.cost().getCurrencyUnit();
    return Money.of(currency, units, RoundingMode.HALF_EVEN).getAmount();
  }

  private void payback(String against, Optional<Payback> payback) {
    fields.put("paybackYears" + against, years(payback, Payback::years));
    fields.put("paybackYears" + against + "Low", years(payback, Payback::low));
    fields.put("paybackYears" + against + "High", years(payback, Payback::high));
    fields.put("paybackNever" + against, payback.map(Payback::never).orElse(null));
  }

  private static @Nullable Object years(
      Optional<Payback> payback, Function<Payback, OptionalDouble> end) {
    OptionalDouble years = payback.map(end).orElse(OptionalDouble.empty());
    return years.isPresent() ? Numbers.of(years.getAsDouble()) : null;
  }

  private Map<String, @Nullable Object> settings() {
    BedSettings bed = option.bed();
    Map<String, @Nullable Object> settings = new LinkedHashMap<>();
    settings.put("control", CandidateFields.name(bed.control()));
    settings.put("days", days(bed));
    settings.put(
        "weekdays", bed.control() == Control.WEEKDAYS ? PresentFields.names(bed.weekdays()) : null);
    settings.put("setVolumeGal", bed.control().metered() ? Numbers.of(setVolume()) : null);
    settings.put("saltDosageLbPerFt3", Numbers.of(dosage().poundsPerCubicFoot()));
    settings.put("brineRefillMinutesSet", Numbers.of(Minutes.of(refill().set())));
    settings.put("hour", bed.control() == Control.METERED_AT_ONCE ? null : bed.hour());
    return settings;
  }

  private @Nullable Object days(BedSettings bed) {
    if (bed.control() == Control.WEEKDAYS) {
      return null;
    }
    return option.candidate().isPresent()
        ? (Object) bed.days()
        : PresentFields.days(study.present().control()).orElse(null);
  }

  /** The volume that starts a regeneration. */
  private double setVolume() {
    return option
        .candidate()
        .flatMap(each -> each.design().schedule().setVolume())
        .or(() -> found().startsAfter())
        .orElseThrow()
        .gallons();
  }

  private SaltDosage dosage() {
    return option.candidate().map(Candidate::dosage).orElseGet(() -> found().dosage());
  }

  private BrineRefill refill() {
    return option.candidate().map(each -> each.design().refill()).orElseGet(() -> found().refill());
  }

  private FoundSoftener found() {
    return study.found();
  }
}

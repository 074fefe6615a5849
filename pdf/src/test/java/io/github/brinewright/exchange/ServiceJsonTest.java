package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.job.Job;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.FaultKind;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a study says as JSON is what it says to a program. */
class ServiceJsonTest {
  /** Four decimals leave the program. */
  private static final double ROUNDED = 0.5e-4 + 1e-9;

  private static final Map<String, Kind> WAYS =
      Map.of(
          "asFound", Kind.AS_FOUND,
          "setRight", Kind.SET_RIGHT,
          "metered", Kind.METERED,
          "replaced", Kind.REPLACED);

  private static final ServicePrices PRICES =
      ServicePrices.of(Money.parse("USD 260"), Money.parse("USD 85"));
  private static final Job HOMES = priced(PresentHomes.job());
  private static final Map<String, ServiceStudy> STUDIES = new HashMap<>();

  private static Job priced(Job job) {
    return job.change().dealer(job.dealer().change().servicePrices(PRICES).build()).build();
  }

  private static ServiceStudy study(String id) {
    return STUDIES.computeIfAbsent(id, each -> HOMES.service(HOMES.home(each).orElseThrow()));
  }

  private static JsonNode json(ServiceStudy study) {
    return PublishedSchema.json(ServiceJson.one(study, words()));
  }

  private static Wording words() {
    return Wording.of(Locale.US, UnitSystem.US);
  }

  static List<String> homes() {
    return HOMES.homes().stream().map(home -> home.site().id()).toList();
  }

  private static void assertNumber(JsonNode json, String name, double value) {
    assertThat(json.get(name).isNumber()).as(name).isTrue();
    assertThat(json.get(name).asDouble()).as(name).isCloseTo(value, within(ROUNDED));
  }

  private static void assertSpread(JsonNode json, String name, Spread spread) {
    assertNumber(json, name, spread.mean());
    assertNumber(json, name + "Low", spread.low());
    assertNumber(json, name + "High", spread.high());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void eachWayHasWhatTheStudyFound(String id) {
    ServiceStudy study = study(id);
    JsonNode json = json(study);
    Volume day = study.comparison().home().softenedExpected();
    WAYS.forEach(
        (name, kind) ->
            study
                .option(kind)
                .ifPresentOrElse(
                    option -> assertWay(json.get(name), option, day),
                    () -> assertThat(json.get(name).isNull()).as(name).isTrue()));
  }

  private static void assertWay(JsonNode json, ServiceOption option, Volume day) {
    assertNumber(json, "daysBetweenRegenerations", option.daysBetweenRegenerations());
    assertNumber(json, "regenerationsPerYear", option.years().regenerations().mean());
    assertNumber(json, "saltPerRegenerationLb", option.saltPerRegeneration().pounds());
    assertSpread(json, "saltPerYearLb", option.saltPounds());
    assertSpread(json, "waterPerYearGal", option.waterGallons());
    assertSpread(json, "hardWaterGalPerYear", option.hardGallons());
    assertSpread(json, "runOutDaysPerYear", option.runOutDays());
    assertNumber(
        json, "hardWaterDaysPerYear", option.hardWater().total().gallons() / day.gallons());
    assertNumber(json, "unusedCapacityShare", option.years().unusedShare());
    assertCosts(json, option);
    assertPayback(json, "", option.payback());
    assertPayback(json, "AgainstFound", option.paybackAgainstFound());
  }

  private static void assertCosts(JsonNode json, ServiceOption option) {
    JsonNode costs = json.get("costPerYear");
    assertThat(costs.get("total").decimalValue()).isEqualByComparingTo(option.cost().getAmount());
    double lines =
        Stream.of("salt", "water", "sewer", "electricity", "service")
            .mapToDouble(line -> costs.get(line).asDouble())
            .sum();
    assertThat(lines).isCloseTo(costs.get("total").asDouble(), within(1e-6));
    assertThat(json.get("costPerYearLow").asDouble())
        .isCloseTo(option.costs().low(), within(0.0051));
    assertThat(json.get("costPerYearHigh").asDouble())
        .isCloseTo(option.costs().high(), within(0.0051));
  }

  private static void assertPayback(JsonNode json, String against, Optional<Payback> payback) {
    String years = "paybackYears" + against;
    assertYears(json.get(years), payback.map(Payback::years));
    assertYears(json.get(years + "Low"), payback.map(Payback::low));
    assertYears(json.get(years + "High"), payback.map(Payback::high));
    JsonNode never = json.get("paybackNever" + against);
    assertThat(never.isNull()).isEqualTo(payback.isEmpty());
    payback.ifPresent(each -> assertThat(never.asBoolean()).isEqualTo(each.never()));
  }

  private static void assertYears(JsonNode json, Optional<OptionalDouble> years) {
    OptionalDouble known = years.orElse(OptionalDouble.empty());
    assertThat(json.isNull()).isEqualTo(known.isEmpty());
    known.ifPresent(each -> assertThat(json.asDouble()).isCloseTo(each, within(ROUNDED)));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void eachFaultHasItsCodeItsWordsAndItsFigures(String id) {
    ServiceStudy study = study(id);
    JsonNode faults = json(study).get("faults");
    assertThat(faults).hasSameSizeAs(study.faults());
    for (int i = 0; i < faults.size(); i++) {
      Fault fault = study.faults().get(i);
      JsonNode json = faults.get(i);
      assertThat(json.get("code").asText()).isEqualTo(fault.code());
      assertThat(json.get("text").asText()).isEqualTo(words().fault(fault));
      assertThat(json.get("source").asText()).isEqualTo(words().source(fault.kind().source()));
      assertThat(json.get("figures").size() + json.get("consequence").size())
          .isEqualTo(fault.figures().size());
    }
  }

  @Test
  void everyKindOfFaultIsTriedHere() {
    Set<FaultKind> seen = EnumSet.noneOf(FaultKind.class);
    homes().forEach(id -> study(id).faults().forEach(fault -> seen.add(fault.kind())));
    assertThat(seen).containsExactlyInAnyOrder(FaultKind.values());
  }

  /** Of 5 days at 4 × 75 gal of 24 gpg the setting reckons with 36,000 grains. */
  @Test
  void whatComesOfAFaultIsApartFromWhatItIsAbout() {
    JsonNode fault = json(study("rating")).get("faults").get(0);
    assertThat(fault.get("code").asText()).isEqualTo("rating-as-capacity");
    assertNumber(fault.get("figures"), "reckonedCapacityGrains", 36_000);
    assertNumber(
        fault.get("figures"), "usableCapacityGrains", study("rating").found().usable().grains());
    assertThat(fault.get("consequence").fieldNames())
        .toIterable()
        .containsExactly("runOutDaysPerYear", "runOutGalPerYear", "saltSavedLbPerYear");
    assertNumber(
        fault.get("consequence"),
        "runOutDaysPerYear",
        study("rating").asFound().hardWater().runOutDays());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void assumptionsAndAdviceAreInWords(String id) {
    ServiceStudy study = study(id);
    JsonNode json = json(study);
    List<String> codes = json.get("assumptions").findValuesAsText("code");
    assertThat(codes)
        .containsExactlyElementsOf(
            study.assumptions().stream().map(each -> each.kind().code()).toList());
    assertThat(json.get("assumptions").findValuesAsText("text"))
        .containsExactlyElementsOf(study.assumptions().stream().map(words()::assumption).toList());
    assertThat(json.get("advice").asText()).isEqualToIgnoringCase(study.advice().name());
    assertThat(json.get("adviceText").asText()).isEqualTo(words().advice(study.advice()));
  }

  /** What the row of the home says, by its place; null is what the row leaves empty. */
  @ParameterizedTest
  @CsvSource({
    "interval,/present/control,clock",
    "interval,/present/setting/days,7",
    "interval,/present/setting/hour,null",
    "interval,/present/setting/volumeGal,null",
    "interval,/present/bed/ratedGrains,40000",
    "interval,/present/bed/resinFt3,null",
    "interval,/present/salt/refillMinutes,10",
    "interval,/present/salt/refillGpm,0.5",
    "interval,/present/salt/regenerant,sodium_chloride",
    "interval,/present/workedOut/resinFt3,1.25",
    "interval,/present/workedOut/saltKnown,true",
    "interval,/present/readMeter,null",
    "no-iron,/present/control,metered_at_night",
    "no-iron,/present/setting/hardnessGpg,20",
    "no-iron,/present/setting/capacityGrains,30000",
    "no-iron,/present/setting/days,null",
    "no-iron,/present/salt/dosageLbPerFt3,8",
    "too-high,/present/control,metered_at_once",
    "too-high,/asFound/settings/hour,null",
    "too-high,/asFound/settings/setVolumeGal,1000",
    "too-long,/present/control,weekdays",
    "too-long,/present/setting/weekdays/0,sun",
    "too-long,/present/setting/hour,3",
    "too-long,/present/bed/vesselDiameterIn,9",
    "too-long,/present/bed/vesselHeightIn,48",
    "too-long,/asFound/settings/control,weekdays",
    "too-long,/asFound/settings/days,null",
    "too-long,/asFound/settings/weekdays/0,sun",
    "too-long,/asFound/settings/hour,3",
    "volume,/present/setting/volumeGal,4000",
    "volume,/present/setting/days,30",
    "volume,/present/salt/perRegenerationLb,10",
    "volume,/asFound/settings/days,30",
    "volume,/asFound/settings/setVolumeGal,4000",
    "reserve,/present/setting/reserveGal,400",
    "reserve,/asFound/settings/setVolumeGal,500",
    "reserve,/asFound/settings/days,null",
    "reserve,/asFound/settings/saltDosageLbPerFt3,8",
    "too-short,/present/bed/ageYears,9",
    "small-refill,/asFound/settings/brineRefillMinutesSet,3",
    "bought-more,/present/salt/boughtLbPerYear,2400",
    "behind,/present/hardnessAfterGpg,4",
    "unknown,/present/workedOut/saltKnown,false",
    "bought,/present/salt/regenerant,potassium_chloride",
    "read,/present/bed/resinId,fine-mesh",
    "read,/present/readMeter,house",
    "read,/present/readings/1/date,2026-04-02",
    "read,/present/readings/1/counterGal,28900",
    "read,/currency,USD",
    "read,/site/id,read"
  })
  void whatWasFoundIsWhatTheRowSays(String id, String place, String value) {
    assertThat(json(study(id)).at(place).asText()).isEqualTo(value);
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theRangeOfTheBedIsThatOfItsAgeAndSalt(String id) {
    ServiceStudy study = study(id);
    JsonNode bed = json(study).at("/present/workedOut");
    assertNumber(bed, "usableCapacityGrains", study.found().usable().grains());
    assertNumber(bed, "usableCapacityGrainsLow", study.found().usableRange().low().grains());
    assertNumber(bed, "usableCapacityGrainsHigh", study.found().usableRange().high().grains());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theRightSettingIsThatOfTheCandidate(String id) {
    ServiceStudy study = study(id);
    JsonNode json = json(study);
    WAYS.forEach(
        (name, kind) ->
            study
                .option(kind)
                .flatMap(ServiceOption::candidate)
                .ifPresent(candidate -> assertSettings(json.get(name), candidate)));
  }

  private static void assertSettings(JsonNode way, Candidate candidate) {
    JsonNode settings = way.get("settings");
    assertThat(settings.get("control").asText())
        .isEqualToIgnoringCase(candidate.setup().control().name());
    assertNumber(settings, "saltDosageLbPerFt3", candidate.dosage().poundsPerCubicFoot());
    assertNumber(
        settings, "brineRefillMinutesSet", candidate.design().refill().set().toMillis() / 60_000.0);
    assertThat(settings.get("setVolumeGal").isNull())
        .isEqualTo(candidate.design().schedule().setVolume().isEmpty());
    candidate
        .design()
        .schedule()
        .setVolume()
        .ifPresent(volume -> assertNumber(settings, "setVolumeGal", volume.gallons()));
  }

  /** Readings of three months leave it nearer to the truth than the size of the home does. */
  @Test
  void readingsMakeTheMeanUseSurer() {
    JsonNode read = json(study("read")).get("meanUse");
    JsonNode typical = json(study("interval")).get("meanUse");
    assertThat(read.get("basis").asText()).isEqualTo("readings");
    assertThat(typical.get("basis").asText()).isEqualTo("statistics");
    assertNumber(read, "galPerDay", study("read").comparison().home().use().expected().gallons());
    assertThat(spreadOf(read)).isLessThan(0.5 * spreadOf(typical));
    for (JsonNode use : List.of(read, typical)) {
      assertThat(use.get("galPerDayLow").asDouble()).isLessThan(use.get("galPerDay").asDouble());
    }
  }

  private static double spreadOf(JsonNode use) {
    return use.get("galPerDayHigh").asDouble() / use.get("galPerDayLow").asDouble() - 1;
  }

  /** Nothing is paid for a softener that stays as it was found. */
  @Test
  void pricesAreThoseOfTheDealerAndTheUnitIsNamedWhereItIsNew() {
    ServiceStudy study = study("interval");
    JsonNode json = json(study);
    Candidate unit = study.option(Kind.REPLACED).orElseThrow().candidate().orElseThrow();

    assertThat(json.at("/asFound/price").isNull()).isTrue();
    assertThat(json.at("/setRight/price/installation").asInt()).isEqualTo(85);
    assertThat(json.at("/metered/price/equipment").asInt()).isEqualTo(260);
    assertThat(json.at("/replaced/price/total").decimalValue())
        .isEqualByComparingTo(unit.quote().total().getAmount());
    assertThat(json.at("/replaced/unitId").asText()).isEqualTo(unit.softener().id());
    assertThat(json.at("/replaced/unitName").asText()).isEqualTo(unit.softener().name());
    assertThat(json.at("/setRight/unitId").isNull()).isTrue();
    assertThat(json.at("/metered/paybackNever").isBoolean()).isTrue();
    assertThat(json.at("/asFound/paybackNever").isNull()).isTrue();
  }

  @Test
  void neverIsToldFromNoPrice() {
    Job job = PresentHomes.job();
    Job free =
        job.change()
            .dealer(job.dealer().change().servicePrices(ServicePrices.NONE).build())
            .build();
    JsonNode unpriced = json(free.service(free.home("interval").orElseThrow()));
    assertThat(unpriced.at("/metered/price").isNull()).isTrue();
    assertThat(unpriced.at("/metered/paybackNever").isNull()).isTrue();
    assertThat(unpriced.at("/metered/paybackYears").isNull()).isTrue();

    JsonNode never = json(study("interval")).get("setRight");
    assertThat(never.get("price").isObject()).isTrue();
    assertThat(never.get("paybackNeverAgainstFound").asBoolean()).isTrue();
    assertThat(never.get("paybackYearsAgainstFound").isNull()).isTrue();
    assertThat(never.get("paybackNever").isNull()).isTrue();
  }

  /** ISO 4217: yen have no decimals. */
  @Test
  void rangesOfCostsHaveTheDecimalsOfTheCurrency() {
    JsonNode json = json(PresentHomes.inYen().service(PresentHomes.inYen().homes().get(0)));
    assertThat(json.get("currency").asText()).isEqualTo(CurrencyUnit.JPY.getCode());
    for (String name : List.of("costPerYearLow", "costPerYearHigh")) {
      assertThat(json.at("/asFound/" + name).decimalValue().scale())
          .as(name)
          .isLessThanOrEqualTo(0);
    }
  }
}

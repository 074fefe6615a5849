package io.github.brinewright.service;

import static io.github.brinewright.service.Found.clock;
import static io.github.brinewright.service.Found.each;
import static io.github.brinewright.service.Found.meter;
import static io.github.brinewright.service.Found.told;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.study.HomeStudy;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What is found, what should be set, and what comes of it. */
class ServiceStudyTest {
  private static final double ROUND_OFF = 1e-9;

  private static ServiceStudy rich() {
    return Visit.to(15, 3).finds(clock(4, 32_000).salt(each(12)));
  }

  private static ServiceOption option(ServiceStudy study, Kind kind) {
    return study.option(kind).orElseThrow();
  }

  @Test
  void everyWayMeetsTheSameDays() {
    ServiceStudy study = rich();
    YearSimulation days =
        new YearSimulation(
            DemandModel.of(study.comparison().home()),
            HomeStudy.USUAL_YEARS,
            YearSimulation.USUAL_SEED);

    assertThat(study.options()).hasSize(Kind.values().length);
    for (ServiceOption option : study.options()) {
      assertThat(option.years()).isEqualTo(days.run(List.of(option.bed())).get(0));
    }
  }

  /** 365 ÷ 4 regenerations of 12 lb, whatever the family uses. */
  @Test
  void aClockTakesItsSaltWhateverIsUsed() {
    ServiceOption found = rich().asFound();

    assertThat(found.salt().pounds()).isCloseTo(365.0 / 4 * 12, within(1e-6));
    assertThat(found.daysBetweenRegenerations()).isCloseTo(4, within(1e-6));
    assertThat(found.saltPounds().low()).isCloseTo(365.0 / 4 * 12, within(12.0));
    assertThat(found.saltPounds().high()).isCloseTo(365.0 / 4 * 12, within(12.0));
  }

  /** What was restored was drawn or thrown away: 400 years of some 60,000 gal. */
  @Test
  void theBooksBalance() {
    for (ServiceOption option : rich().options()) {
      assertThat(option.years().imbalanceGallons()).isCloseTo(0, within(1e-3));
    }
  }

  @Test
  void whatAYearCostsIsTheSumOfItsLinesAtTheTariff() {
    ServiceOption found = rich().asFound();
    Money salt = found.costLines().get(io.github.brinewright.cost.CostKind.SALT);

    assertThat(found.cost()).isEqualTo(Money.total(found.costLines().values()));
    assertThat(salt.toBigMoney().toMoney(java.math.RoundingMode.HALF_EVEN))
        .isEqualTo(
            Visit.tariff()
                .saltCost(Regenerant.SODIUM_CHLORIDE, found.salt())
                .toMoney(java.math.RoundingMode.HALF_EVEN));
  }

  @Test
  void aPriceComesBackWithWhatItSavesAYear() {
    ServiceStudy study = rich();
    ServiceOption right = option(study, Kind.SET_RIGHT);
    ServiceOption meter = option(study, Kind.METERED);

    assertThat(years(right.paybackAgainstFound().orElseThrow()))
        .isCloseTo(95 / (amount(study.asFound()) - amount(right)), within(ROUND_OFF));
    assertThat(years(meter.payback().orElseThrow()))
        .isCloseTo(280 / (amount(right) - amount(meter)), within(ROUND_OFF));
    assertThat(years(meter.paybackAgainstFound().orElseThrow()))
        .isCloseTo(280 / (amount(study.asFound()) - amount(meter)), within(ROUND_OFF));
    assertThat(right.payback()).as("against itself").isEmpty();
    assertThat(study.asFound().paybackAgainstFound()).isEmpty();
  }

  private static double years(Payback payback) {
    return payback.years().orElseThrow();
  }

  private static double amount(ServiceOption option) {
    return option.cost().getAmount().doubleValue();
  }

  /** 10 days instead of 4 take less of everything but soft water. */
  @Test
  void whatSavesNothingNeverComesBack() {
    ServiceStudy study = Visit.to(20, 4).finds(clock(10, 48_000).salt(each(9)));
    Payback right = option(study, Kind.SET_RIGHT).paybackAgainstFound().orElseThrow();

    assertThat(right.never()).isTrue();
    assertThat(right.low()).isEmpty();
    assertThat(right.within(1_000)).isFalse();
  }

  @Test
  void withoutPricesNothingComesBack() {
    ServiceStudy study =
        Visit.to(15, 3).service(ServicePrices.NONE).finds(clock(4, 32_000).salt(each(12)));

    for (Kind kind : List.of(Kind.AS_FOUND, Kind.SET_RIGHT, Kind.METERED)) {
      assertThat(option(study, kind).price()).isEmpty();
      assertThat(option(study, kind).payback()).isEmpty();
      assertThat(option(study, kind).paybackAgainstFound()).isEmpty();
    }
    assertThat(option(study, Kind.REPLACED).payback()).isPresent();
    assertThat(study.advice()).isNotEqualTo(Advice.ADD_METER);
  }

  @Test
  void aFoundMeterSetRightIsTheMeter() {
    ServiceStudy study = Visit.to(20, 4).finds(meter(300, 0, 48_000).salt(each(9)));
    ServiceOption right = option(study, Kind.SET_RIGHT);
    ServiceOption meter = option(study, Kind.METERED);

    assertThat(meter.years()).isEqualTo(right.years());
    assertThat(meter.price()).isEqualTo(right.price());
    assertThat(meter.candidate()).isEqualTo(right.candidate());
    assertThat(meter.paybackAgainstFound()).isEqualTo(right.paybackAgainstFound());
    assertThat(meter.payback()).isEmpty();
  }

  @Test
  void whatIsSetWellStaysAsItIs() {
    ServiceStudy study = Visit.to(12, 2).finds(clock(8, 32_000).salt(each(6)).hour(3));
    ServiceOption right = option(study, Kind.SET_RIGHT);

    assertThat(study.faults()).isEmpty();
    assertThat(right.years()).isEqualTo(study.asFound().years());
    assertThat(right.price()).isEmpty();
    assertThat(right.candidate()).isEmpty();
    assertThat(option(study, Kind.METERED).bed().control().metered()).isTrue();
  }

  @Test
  void whereTheHourAloneIsWrongTheHourAloneIsChanged() {
    PresentSoftener.Builder found = clock(8, 32_000).salt(each(6)).hour(7);
    ServiceStudy study = Visit.to(12, 2).finds(found);
    ServiceOption right = option(study, Kind.SET_RIGHT);

    assertThat(right.bed()).isEqualTo(study.asFound().bed().withHour(2));
    assertThat(right.price()).contains(Visit.dollars(95));
    assertThat(right.hardGallons().mean()).isLessThan(study.asFound().hardGallons().mean());
  }

  @Test
  void aNewUnitTakesTheSaltThatTheFamilyUses() {
    ServiceStudy study =
        Visit.to(15, 3)
            .finds(clock(4, 32_000).salt(each(12)).regenerant(Regenerant.POTASSIUM_CHLORIDE));

    assertThat(option(study, Kind.REPLACED).candidate().orElseThrow().softener().id())
        .isEqualTo("k15");
  }

  @Test
  void aUnitWithoutAPriceReplacesNothing() {
    PriceList unpriced =
        PriceList.of(
            List.of(Offer.unpriced(Visit.priceList().offers().get(1).softener(), Visit.USD)));

    assertThat(Visit.to(15, 3).sold(unpriced).finds(clock(4, 32_000)).option(Kind.REPLACED))
        .isEmpty();
  }

  @Test
  void theSameStudyTwiceIsTheSame() {
    ServiceStudy one = rich();
    ServiceStudy other = rich();

    assertThat(other.toString()).isEqualTo(one.toString());
    assertThat(other.faults()).isEqualTo(one.faults());
    for (ServiceOption option : one.options()) {
      ServiceOption again = option(other, option.kind());
      assertThat(again.years()).isEqualTo(option.years());
      assertThat(again.saltPounds()).isEqualTo(option.saltPounds());
      assertThat(again.costs()).isEqualTo(option.costs());
      assertThat(again.paybackAgainstFound()).isEqualTo(option.paybackAgainstFound());
    }
  }

  /** The hard water of two causes adds up to that of the softener as found. */
  @Test
  void twoCausesOfHardWaterShareIt() {
    ServiceStudy study =
        Visit.to(16, 4)
            .with(io.github.brinewright.home.Substance.IRON, 1.2)
            .finds(told(16, 48_000, 48_000).salt(each(9)));

    assertThat(study.faults().stream().map(Fault::kind))
        .containsExactly(FaultKind.RATING_AS_CAPACITY, FaultKind.HARDNESS_WITHOUT_IRON);
    assertThat(gallons(study.faults().get(0)) + gallons(study.faults().get(1)))
        .isCloseTo(study.asFound().hardWater().runOut().gallons(), within(1e-6));
  }

  private static double gallons(Fault fault) {
    return ((io.github.brinewright.quantity.Volume)
            ((io.github.brinewright.trace.Figure.Physical) fault.figures().get(3)).value())
        .gallons();
  }

  /** No pound is saved twice: 4 days of 16 lb, where 5 days of 6 lb would do. */
  @Test
  void twoCausesOfSaltShareIt() {
    ServiceStudy study = Visit.to(15, 3).finds(clock(4, 32_000).salt(each(16)));

    assertThat(study.faults().stream().map(Fault::kind))
        .containsExactly(FaultKind.INTERVAL_TOO_SHORT, FaultKind.DOSAGE_TOO_RICH);
    double saved = study.asFound().salt().minus(option(study, Kind.SET_RIGHT).salt()).pounds();
    assertThat(pounds(study.faults().get(0)) + pounds(study.faults().get(1)))
        .isCloseTo(saved, within(1e-6));
  }

  private static double pounds(Fault fault) {
    return ((io.github.brinewright.quantity.Mass)
            ((io.github.brinewright.trace.Figure.Physical) fault.figures().get(2)).value())
        .pounds();
  }

  @Test
  void aHomeWithoutASoftenerIsRefused() {
    assertThatThrownBy(
            () ->
                ServiceStudy.of(
                    Visit.priceList().compare(Visit.to(15, 3).home().site(), Visit.tariff()),
                    Visit.PRICES))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no present softener");
  }

  @Test
  void pricesInAnotherCurrencyAreRefused() {
    ServicePrices euros = ServicePrices.of(Money.parse("EUR 200"), Money.parse("EUR 80"));

    assertThatThrownBy(() -> Visit.to(15, 3).service(euros).finds(clock(4, 32_000)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("meter and visit are priced in EUR");
  }
}

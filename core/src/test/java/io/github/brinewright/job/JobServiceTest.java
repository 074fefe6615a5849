package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.softener.Softener;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A job studies the softener that is already in a home at its dealer's prices. */
class JobServiceTest {
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);
  private static final ServicePrices PRICES =
      ServicePrices.of(Money.parse("USD 260"), Money.parse("USD 85"));

  private static Site.Builder site(String id) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(24)).build();
    return Site.of(id, water, Household.of(4).build());
  }

  private static QuotedHome withSoftener() {
    PresentSoftener present =
        PresentSoftener.of(PresentControl.clock(7)).rated(HardnessAmount.ofGrains(40_000)).build();
    return new QuotedHome(site("S1").present(present).build(), TARIFF);
  }

  private static Job job() {
    Softener unit = Softener.withResin("U1", Volume.ofCubicFeet(1.5)).build();
    return Job.of(PriceList.of(List.of(Offer.of(unit, Money.parse("USD 900")).build())))
        .dealer(Dealer.named("Weir Street Water").servicePrices(PRICES).build())
        .home(withSoftener())
        .home(new QuotedHome(site("A1").build(), TARIFF))
        .build();
  }

  private static Money price(ServiceStudy study, Kind kind) {
    return study.option(kind).flatMap(ServiceOption::price).orElseThrow();
  }

  @Test
  void theDealersPricesOfVisitAndMeterArePaidBack() {
    ServiceStudy study = job().service(withSoftener());

    assertThat(study.comparison().home().site().id()).isEqualTo("S1");
    assertThat(price(study, Kind.SET_RIGHT)).isEqualTo(Money.parse("USD 85"));
    assertThat(price(study, Kind.METERED)).isEqualTo(Money.parse("USD 260"));
  }

  @Test
  void aUnitOfThePriceListMayTakeItsPlaceAtItsPrice() {
    assertThat(price(job().service(withSoftener()), Kind.REPLACED))
        .isEqualTo(Money.parse("USD 900"));
  }

  /** Placeholder prices are nobody's. */
  @Test
  void withoutAPriceListNothingTakesItsPlace() {
    Job job =
        Job.of(PriceList.of(BuiltInOffers.all(CurrencyUnit.USD))).home(withSoftener()).build();

    assertThat(job.service(withSoftener()).options())
        .extracting(ServiceOption::kind)
        .containsExactly(Kind.AS_FOUND, Kind.SET_RIGHT, Kind.METERED);
    assertThat(job.compare(withSoftener()).recommended()).isPresent();
  }

  @Test
  void aHomeWithoutASoftenerIsRefused() {
    Job job = job();
    QuotedHome without = job.home("A1").orElseThrow();
    assertThatThrownBy(() -> job.service(without))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the home A1 has no present softener");
  }

  @Test
  void aJobIsChangedInOnePartAndKeepsAllOthers() {
    Job job = job();
    Dealer dearer = job.dealer().change().servicePrices(ServicePrices.NONE).build();
    Job changed = job.change().dealer(dearer).build();

    assertThat(job.change().build()).isEqualTo(job);
    assertThat(changed.dealer()).isEqualTo(dearer);
    assertThat(changed.change().dealer(job.dealer()).build()).isEqualTo(job);
    assertThat(changed.service(withSoftener()).option(Kind.METERED).orElseThrow().price())
        .isEmpty();
  }
}

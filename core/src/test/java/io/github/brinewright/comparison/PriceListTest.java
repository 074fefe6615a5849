package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.cost.YearlyCost;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.study.HomeStudy;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Parts of a price list, a comparison and its candidates agree, or are refused. */
class PriceListTest {
  private static final CurrencyUnit USD = CurrencyUnit.USD;
  private static final Tariff TARIFF = Tariff.placeholder(USD);
  private static final Site SITE =
      Site.of(
              "h",
              WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build(),
              Household.of(4).build())
          .build();

  private static Softener softener(String id, double cubicFeet, double... dosages) {
    return Softener.withResin(id, Volume.ofCubicFeet(cubicFeet))
        .dosages(Arrays.stream(dosages).mapToObj(SaltDosage::ofPoundsPerCubicFoot).toList())
        .build();
  }

  private static Offer offer(String id, String price) {
    return Offer.of(softener(id, 2, 6), Money.parse(price)).build();
  }

  @Test
  void twoSoftenersWithOneIdAreRefused() {
    assertThatThrownBy(() -> PriceList.of(List.of(offer("a", "USD 1"), offer("a", "USD 2"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two softeners of the price list have the id a");
    assertThatThrownBy(() -> PriceList.of(List.of())).hasMessageContaining("no unit");
  }

  @Test
  void theCreditIsTheFirstOfTheWaysOrThatOfTheTerms() {
    Terms terms =
        Terms.builder()
            .depositShare(new BigDecimal("0.25"))
            .financing(new Credit(new BigDecimal("0.089"), 36))
            .build();
    PaymentWay cash = PaymentWay.of("cash", PaymentKind.CASH, Money.zero(USD)).build();
    PaymentWay lent = PaymentWay.of("lent", PaymentKind.CREDIT, Money.zero(USD)).months(12).build();
    PriceList.Builder prices = PriceList.builder(List.of(offer("a", "USD 1"))).terms(terms);

    PaymentWay ofTerms = prices.build().credit().orElseThrow();
    assertThat(ofTerms.months()).isEqualTo(36);
    assertThat(ofTerms.yearlyRate()).isEqualByComparingTo("0.089");
    assertThat(ofTerms.depositShare()).isEqualByComparingTo("0.25");
    assertThat(prices.ways(List.of(cash, lent)).build().credit()).contains(lent);
    assertThat(prices.ways(List.of(cash)).build().credit()).isEmpty();
  }

  @Test
  void oneCurrencyThroughout() {
    assertThatThrownBy(() -> PriceList.of(List.of(offer("a", "USD 1"), offer("b", "EUR 1"))))
        .hasMessageContaining("the offer of b is in EUR, but the first one in USD");
    assertThatThrownBy(
            () ->
                Offer.of(softener("a", 2, 6), Money.parse("USD 1"))
                    .installation(Money.parse("EUR 1")))
        .hasMessageContaining("price of the installation is in EUR, but USD is wanted");
    PriceList prices = PriceList.of(List.of(offer("a", "USD 1")));
    assertThatThrownBy(() -> prices.compare(SITE, Tariff.placeholder(CurrencyUnit.EUR)))
        .hasMessageContaining("the tariff placeholder is in EUR, but USD is wanted");
  }

  @Test
  void theBestComesFirstInWhateverOrderCandidatesAreFound() {
    List<Offer> offers = new ArrayList<>(BuiltInOffers.all(USD));
    PriceList prices = PriceList.of(offers);
    Comparison comparison = prices.compare(SITE, TARIFF);
    List<Candidate> reversed = new ArrayList<>(comparison.candidates());
    Collections.reverse(reversed);

    Comparison again =
        new Comparison(prices, Surveyed.of(prices, comparison.home()), TARIFF, reversed);

    assertThat(again.recommended()).isEqualTo(comparison.recommended());
    assertThat(again.candidates()).isEqualTo(comparison.candidates());
    assertThat(again.recommends(comparison.recommended().orElseThrow())).isTrue();
  }

  @Test
  void exactlyOneCandidateIsRecommended() {
    Softener twice = softener("a", 2, 6, 6, 8);
    Comparison comparison = PriceList.of(List.of(Offer.unpriced(twice, USD))).compare(SITE, TARIFF);

    assertThat(comparison.candidates()).hasSize(2);
    assertThat(comparison.candidates().stream().filter(comparison::recommends)).hasSize(1);
  }

  @Test
  void equalInputsAreEqualAndPrintReadably() {
    PriceList prices = PriceList.of(BuiltInOffers.all(USD));
    Comparison one = prices.compare(SITE, TARIFF);
    Comparison two = prices.toBuilder().build().compare(SITE, Tariff.placeholder(USD));
    Candidate first = one.candidates().get(0);

    assertThat(one).isEqualTo(two).hasSameHashCodeAs(two);
    assertThat(one.candidates()).isEqualTo(two.candidates());
    assertThat(one.whyRecommended()).isEqualTo(two.whyRecommended());
    assertThat(first).isNotEqualTo(one.candidates().get(1));
    assertThat(one).isNotEqualTo(prices.compare(SITE.withPeople(5), TARIFF));
    HomeStudy study = HomeStudy.of(one, 3).orElseThrow();
    assertThat(study).isEqualTo(HomeStudy.of(two, 3).orElseThrow());
    Revision revision =
        Revision.between(one, LocalDate.of(2026, 1, 2), prices.compare(SITE.withPeople(5), TARIFF));
    assertThat(Stream.of(one, first, first.quote(), first.yearly(), first.life()))
        .allSatisfy(part -> assertThat(part.toString()).contains("bed-"));
    assertThat(Stream.of(one, first, first.life(), study, study.dosage(), revision, TARIFF))
        .allSatisfy(part -> assertThat(part.toString()).doesNotContain("@").doesNotContain("$"));
  }

  @Test
  void partsOfAnotherSoftenerAreRefused() {
    PriceList prices = PriceList.of(List.of(offer("a", "USD 1")));
    HomeLoad home = new HomeLoad(SITE);
    Setup stranger = Setup.of(softener("b", 2, 6)).get(0);
    Candidate own = prices.compare(SITE, TARIFF).candidates().get(0);
    Offer other = offer("a", "USD 2");

    assertThatThrownBy(() -> prices.appraise(prices.sizer(home).design(stranger), TARIFF))
        .hasMessageContaining("the softener b is not in this price list");
    assertThatThrownBy(() -> YearlyCost.of(own.design(), offer("c", "USD 1"), TARIFF))
        .hasMessageContaining("the offer is of c, but the design is of a");
    assertThatThrownBy(
            () ->
                LifeCost.of(new Quote(other, Control.METERED_AT_NIGHT, Terms.USUAL), own.yearly()))
        .hasMessageContaining("the quote is of");
    assertThatThrownBy(() -> new Quote(own.offer(), Control.CLOCK, Terms.USUAL))
        .hasMessageContaining("is not sold with the control CLOCK");
  }
}

package io.github.brinewright.service;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A home on public water, and a dealer, both invented, to be changed by a test. */
final class Visit {
  static final CurrencyUnit USD = CurrencyUnit.USD;
  static final ServicePrices PRICES = ServicePrices.of(dollars(280), dollars(95));

  private final Household.Builder people;
  private final WaterAnalysis.Builder water;
  private Consumer<Site.Builder> more = site -> {};
  private PriceList prices = priceList();
  private ServicePrices service = PRICES;

  private Visit(double gpg, int number) {
    water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg));
    people = Household.of(number);
  }

  static Visit to(double gpg, int people) {
    return new Visit(gpg, people);
  }

  Visit with(Substance substance, double milligrams) {
    water.found(substance, Concentration.ofMilligramsPerLitre(milligrams));
    return this;
  }

  Visit people(Consumer<Household.Builder> change) {
    change.accept(people);
    return this;
  }

  Visit site(Consumer<Site.Builder> change) {
    more = more.andThen(change);
    return this;
  }

  Visit sold(PriceList list) {
    prices = list;
    return this;
  }

  Visit service(ServicePrices asked) {
    service = asked;
    return this;
  }

  private Site.Builder site() {
    Site.Builder site = Site.of("h", water.build(), people.build());
    more.accept(site);
    return site;
  }

  /** What the home asks for, by the dealer's way to size. */
  HomeLoad home() {
    return prices.home(site().build());
  }

  Comparison comparison(PresentSoftener present) {
    return prices.compare(site().present(present).build(), tariff());
  }

  ServiceStudy finds(PresentSoftener.Builder present) {
    return ServiceStudy.of(comparison(present.build()), service);
  }

  FoundSoftener found(PresentSoftener.Builder present) {
    return FoundSoftener.of(present.build(), home());
  }

  static Tariff tariff() {
    return Tariff.placeholder(USD);
  }

  static Money dollars(double amount) {
    return Money.of(USD, amount);
  }

  /** Beds of 1, 1.5 and 2 ft3 under a meter, and one of 1.5 ft3 on potassium. */
  static PriceList priceList() {
    List<Offer> offers = new ArrayList<>();
    offers.add(offer("m1", 1, 1_100, Regenerant.SODIUM_CHLORIDE));
    offers.add(offer("m15", 1.5, 1_300, Regenerant.SODIUM_CHLORIDE));
    offers.add(offer("m2", 2, 1_600, Regenerant.SODIUM_CHLORIDE));
    offers.add(offer("k15", 1.5, 1_300, Regenerant.POTASSIUM_CHLORIDE));
    return PriceList.of(offers);
  }

  private static Offer offer(String id, double cubicFeet, double price, Regenerant salt) {
    Softener unit =
        Softener.withResin(id, Volume.ofCubicFeet(cubicFeet))
            .dosages(List.of(dosage(4), dosage(6), dosage(8)))
            .controls(Set.of(Control.METERED_AT_NIGHT))
            .regenerant(salt)
            .build();
    return Offer.of(unit, dollars(price)).installation(dollars(400)).build();
  }

  private static SaltDosage dosage(double pounds) {
    return SaltDosage.ofPoundsPerCubicFoot(pounds);
  }
}

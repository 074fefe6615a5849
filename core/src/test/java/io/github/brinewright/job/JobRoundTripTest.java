package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Escalation;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TapIron;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Turbidity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sale.HomeSale;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.trace.Source;
import io.github.brinewright.words.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A job built from objects is read back equal from the files that it writes. */
class JobRoundTripTest {
  private static final List<String> NAMES =
      List.of("Zoé Ñandú", "O\"Brien, Ann", "C:\\homes\\1", "# 5 = five", "Ελένη 1", "a:b!c");

  /** Objects of a job, every part of them by chance. */
  private record Chance(Random random) {
    double within(double low, double high) {
      double value = low + (high - low) * random.nextDouble();
      double tenths = Math.max(low, Math.rint(value * 10) / 10);
      return random.nextBoolean() ? value : tenths + 0.0; // never the negative zero
    }

    int whole(int low, int high) {
      return low + random.nextInt(high - low + 1);
    }

    boolean yes() {
      return random.nextBoolean();
    }

    String name() {
      return NAMES.get(random.nextInt(NAMES.size()));
    }

    <E extends Enum<E>> E one(Class<E> type) {
      return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
    }

    BigDecimal amount(double high) {
      return BigDecimal.valueOf(Math.round(within(0, high) * 10_000), 4);
    }

    Money money(CurrencyUnit currency) {
      return Money.ofMinor(currency, whole(0, 500_000));
    }

    CurrencyUnit currency() {
      return CurrencyUnit.of(List.of("USD", "CAD", "JPY", "KWD").get(random.nextInt(4)));
    }

    Locale locale() {
      return Languages.USUAL.get(random.nextInt(Languages.USUAL.size()));
    }

    WaterAnalysis water() {
      WaterAnalysis.Builder water =
          WaterAnalysis.ofHardness(
                  yes()
                      ? Hardness.ofGrainsPerGallon(within(11, 200))
                      : Hardness.ofMilligramsPerLitre(within(200, 3_400)))
              .from(one(WaterSource.class))
              .bacteria(one(BacteriaResult.class))
              .eColi(one(BacteriaResult.class))
              .ironBacteria(one(BacteriaResult.class));
      for (Substance substance : Substance.values()) {
        if (yes()) {
          water.found(substance, labResult());
        }
      }
      if (yes()) {
        water.ph(within(6, 8)).temperature(Temperature.ofFahrenheit(within(40, 70)));
        water.date(LocalDate.of(2026, whole(1, 12), whole(1, 28)));
      }
      if (yes()) {
        water.hardnessBy(one(HardnessMethod.class)).ironAtTap(one(TapIron.class));
        water.turbidity(Turbidity.ofNtu(within(0, 4_000)));
      }
      return water.build();
    }

    LabResult labResult() {
      Concentration amount = Concentration.ofMilligramsPerLitre(within(0.01, 5));
      return switch (one(LabResult.Kind.class)) {
        case MEASURED -> LabResult.measured(yes() ? amount : amount.times(0));
        case BELOW_REPORTING_LIMIT -> LabResult.below(amount);
        case NOT_DETECTED -> LabResult.NOT_DETECTED;
      };
    }

    TreatedWater treated() {
      TreatedWater treated = TreatedWater.ofHardness(Hardness.ofGrainsPerGallon(within(11, 200)));
      treated = yes() ? treated.withIron(labResult()) : treated;
      treated = yes() ? treated.withManganese(labResult()) : treated;
      return yes() ? treated.withPh(within(0, 14)) : treated;
    }

    Household household() {
      Household.Builder household =
          Household.of(whole(1, 40))
              .bathrooms(whole(1, 40) / 2.0)
              .perPersonDaily(Volume.ofGallons(within(10, 400)))
              .softened(one(SoftenedShare.class))
              .away(whole(0, 300))
              .guests(whole(0, 40), whole(0, 300));
      if (yes()) {
        household.peakFlow(FlowRate.ofGallonsPerMinute(within(0.5, 200)));
      }
      if (yes()) {
        household.bill(new Bill(Volume.ofGallons(within(10, 1_000_000)), whole(7, 190)));
      }
      for (Fixture fixture : Fixture.values()) {
        if (yes()) {
          household.fixture(fixture, whole(1, 100));
        }
      }
      return household.build();
    }

    /** A name or nothing. */
    String text() {
      return yes() ? name() : "";
    }

    QuoteRecord record() {
      return new QuoteRecord(text(), whole(1, 999), text(), text());
    }

    Site site(String id, Resin own) {
      Supply supply = Supply.NOT_MEASURED;
      supply = yes() ? supply.withPressure(Pressure.ofPsi(within(5, 200))) : supply;
      supply = yes() ? supply.withFlow(FlowRate.ofGallonsPerMinute(within(0.5, 200))) : supply;
      supply = yes() ? supply.withFlowingPressure(Pressure.ofPsi(within(1, 200))) : supply;
      Site.Builder site =
          Site.of(id, water(), household())
              .contact(
                  new Customer(name(), text(), text()).reachedBy(text(), text()).printedAs(text()))
              .supply(supply)
              .allowances(new FoulingAllowances(allowance(), allowance()))
              .target(Hardness.ofGrainsPerGallon(within(0, 10)))
              .place(place())
              .brineTankTemperature(Temperature.ofFahrenheit(within(33, 110)))
              .softerWanted(yes());
      if (yes()) {
        site.present(present(own));
      }
      return (yes() ? site.treated(treated()) : site).build();
    }

    PresentSoftener present(Resin own) {
      PresentSoftener.Builder present =
          PresentSoftener.of(control()).regenerant(one(Regenerant.class));
      switch (whole(0, 2)) {
        case 0 -> present.rated(HardnessAmount.ofGrains(within(3_200, 640_000)));
        case 1 -> present.resinVolume(Volume.ofCubicFeet(within(0.1, 20)));
        default -> present.vessel(vessel());
      }
      if (yes()) {
        present.resin(yes() ? own : ShippedResins.FINE_MESH).ageYears(whole(0, 60));
      }
      if (yes()) {
        present.hour(whole(0, 23)).salt(salt());
      }
      if (yes()) {
        present
            .saltBought(Mass.ofPounds(within(0, 20_000)))
            .hardnessAfter(Hardness.ofGrainsPerGallon(within(0, 200)))
            .readings(one(ReadMeter.class), readings());
      }
      return present.build();
    }

    PresentControl control() {
      Optional<Integer> days = yes() ? Optional.of(whole(1, 99)) : Optional.empty();
      Optional<Volume> reserve =
          yes() ? Optional.of(Volume.ofGallons(within(0, 50))) : Optional.empty();
      return switch (whole(0, 3)) {
        case 0 -> PresentControl.clock(whole(1, 99));
        case 1 -> PresentControl.weekdays(EnumSet.of(one(DayOfWeek.class), one(DayOfWeek.class)));
        case 2 ->
            new PresentControl.ByVolume(
                Volume.ofGallons(within(60, 100_000)), yes(), reserve, days);
        default ->
            new PresentControl.ByHardness(
                Hardness.ofGrainsPerGallon(within(1, 15)),
                yes()
                    ? Optional.of(HardnessAmount.ofGrains(within(1_000, 1_000_000)))
                    : Optional.empty(),
                yes(),
                reserve,
                days);
      };
    }

    PresentSalt salt() {
      Optional<FlowRate> flow =
          yes() ? Optional.of(FlowRate.ofGallonsPerMinute(within(0.05, 5))) : Optional.empty();
      return switch (whole(0, 2)) {
        case 0 -> new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(within(1, 30)));
        case 1 -> new PresentSalt.EachTime(Mass.ofPounds(within(0.2, 400)));
        default -> new PresentSalt.Refill(Minutes.toDuration(within(0.1, 120)), flow);
      };
    }

    List<MeterReading> readings() {
      LocalDate first = LocalDate.of(2025, whole(1, 12), whole(1, 28));
      Volume stood = Volume.ofGallons(within(0, 50_000_000));
      Volume more = stood.plus(Volume.ofGallons(within(0, 100_000)));
      return List.of(
          new MeterReading(first, stood),
          new MeterReading(first.plusDays(1), stood),
          new MeterReading(first.plusDays(whole(2, 400)), more));
    }

    Vessel vessel() {
      return new Vessel(Length.ofInches(within(4, 90)), Length.ofInches(within(4, 90)));
    }

    Place place() {
      return Place.of(List.of("US", "US-CA", "CA", "CA-ON").get(random.nextInt(4)));
    }

    FoulingAllowance allowance() {
      return FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(within(0, 20));
    }

    Resin ownResin() {
      return new Resin(
          "own",
          name(),
          new TableCurve(
              List.of(point(3, within(11_000, 12_000)), point(15, within(25_000, 29_000))),
              Source.given(name())),
          Length.ofMillimetres(within(0.2, 1.5)),
          Density.ofKilogramsPerCubicMetre(within(1_050, 1_600)));
    }

    TableCurve.Point point(double dosage, double capacity) {
      return new TableCurve.Point(
          SaltDosage.ofPoundsPerCubicFoot(dosage), ResinCapacity.ofGrainsPerCubicFoot(capacity));
    }

    Softener softener(String id, Resin own) {
      Softener.Builder unit =
          yes()
              ? Softener.withRating(id, HardnessAmount.ofGrains(within(1_000, 1_000_000)))
              : Softener.withResin(id, Volume.ofCubicFeet(within(0.1, 20)))
                  .dosages(dosages())
                  .designFactor(within(0.5, 1));
      unit.name(name())
          .resin(yes() ? own : ShippedResins.STANDARD_GEL)
          .refill(FlowRate.ofGallonsPerMinute(within(0.05, 5)), Minutes.toDuration(within(0.01, 5)))
          .valveLoss(Pressure.ofPsi(within(0, 50)))
          .standby(Power.ofWatts(within(0, 100)))
          .regenerant(one(Regenerant.class));
      tanks(unit);
      if (yes()) {
        unit.vessel(vessel())
            .brineTank(
                new BrineTank(Length.ofInches(within(8, 60)), Length.ofInches(within(8, 60))))
            .serviceFlow(
                FlowRate.ofGallonsPerMinute(within(0.5, 200)),
                FlowRate.ofGallonsPerMinute(within(0.5, 200)));
      }
      if (yes()) {
        unit.saltStorage(Mass.ofPounds(within(1, 5_000)))
            .plan(one(CyclePlan.class))
            .drainFlows(List.of(FlowRate.ofGallonsPerMinute(within(0.2, 60))));
      }
      return unit.build();
    }

    void tanks(Softener.Builder unit) {
      Arrangement arrangement = one(Arrangement.class);
      unit.arrangement(arrangement, whole(arrangement.tanks().low(), arrangement.tanks().high()));
      if (arrangement != Arrangement.TWIN_ALTERNATING) {
        unit.controls(EnumSet.of(one(Control.class), one(Control.class)));
      }
      if (yes()) {
        unit.certifiedEfficiency(SaltEfficiency.ofGrainsPerPound(within(500, 6_000)));
      }
    }

    List<SaltDosage> dosages() {
      return List.of(
          SaltDosage.ofPoundsPerCubicFoot(within(3, 6)),
          SaltDosage.ofPoundsPerCubicFoot(within(7, 15)));
    }

    Offer offer(String id, Resin own, CurrencyUnit currency) {
      return Offer.of(softener(id, own), money(currency))
          .installation(money(currency))
          .yearlyService(money(currency))
          .meterExtra(money(currency))
          .build();
    }

    Tariff tariff(String id, CurrencyUnit currency) {
      return Tariff.builder(id, currency)
          .name(name())
          .water(rate(currency))
          .sewer(rate(currency))
          .salt(BigMoney.of(currency, amount(1)))
          .potassium(BigMoney.of(currency, amount(2)))
          .perKilowattHour(BigMoney.of(currency, amount(3)))
          .escalation(new Escalation(within(-0.05, 0.2), within(-0.05, 0.2)))
          .build();
    }

    BlockRate rate(CurrencyUnit currency) {
      BlockRate.Block last = block(BlockRate.UNLIMITED, currency);
      return new BlockRate(
          yes()
              ? List.of(last)
              : List.of(block(Volume.ofGallons(within(1, 1_000_000)), currency), last));
    }

    BlockRate.Block block(Volume upTo, CurrencyUnit currency) {
      return new BlockRate.Block(upTo, BigMoney.of(currency, amount(20)));
    }

    Terms terms() {
      Terms.Builder terms =
          Terms.builder()
              .taxRate(percent(50))
              .taxOnInstallation(yes())
              .depositShare(percent(100))
              .years(whole(1, 30))
              .discountRate(within(-0.05, 0.2));
      return (yes() ? terms.financing(new Credit(percent(60), whole(1, 240))) : terms).build();
    }

    /** Two that are sold and two that are taken off. */
    List<Item> items(CurrencyUnit currency) {
      Item sold =
          named(Item.of("I1", ItemKind.TREATMENT, money(currency)))
              .quantity(whole(1, 99))
              .yearlyUpkeep(money(currency))
              .renewedEvery(whole(1, 30), money(currency))
              .requiredBy(List.of("iron-above-bed", "pressure-high"))
              .build();
      Item included =
          named(Item.of("I2", ItemKind.LABOUR, money(currency))).need(ItemNeed.INCLUDED).build();
      Item share =
          named(Item.ofShare("I3", ItemKind.DISCOUNT, percent(100), Money.zero(currency))).build();
      Item bundle =
          named(Item.of("I4", ItemKind.BUNDLE, money(currency)))
              .bundled(List.of("I1", "I2"))
              .build();
      return List.of(sold, included, share, bundle).subList(0, yes() ? 4 : 0);
    }

    List<PaymentWay> ways(CurrencyUnit currency) {
      Money nothing = Money.zero(currency);
      PaymentWay cash =
          PaymentWay.of("P1", PaymentKind.CASH, nothing).depositShare(percent(100)).build();
      PaymentWay credit =
          PaymentWay.of("P2", PaymentKind.CREDIT, nothing)
              .name(LocalText.of(name()).with("es", name()))
              .text(LocalText.of(name()))
              .yearlyRate(percent(60))
              .months(whole(1, 240))
              .fee(money(currency))
              .firstDays(whole(3, 360))
              .creditor(name())
              .build();
      PaymentWay rental =
          PaymentWay.of("P3", PaymentKind.RENTAL, nothing)
              .months(whole(1, 240))
              .monthlyShare(new BigDecimal("0.025"))
              .endShare(percent(100))
              .serviceIncluded(yes())
              .build();
      return List.of(cash, credit, rental).subList(0, yes() ? 3 : 0);
    }

    private Item.Builder named(Item.Builder item) {
      return item.name(LocalText.of(name()).with("fr", name()))
          .text(yes() ? LocalText.NONE : LocalText.of(name()).with("es", name()))
          .taxed(yes());
    }

    BigDecimal percent(int high) {
      return BigDecimal.valueOf(whole(0, high * 100), 4).stripTrailingZeros();
    }

    Limits limits() {
      Limits.Builder limits = Limits.builder();
      if (yes()) {
        limits.designUse(within(0.5, 0.9));
      }
      return limits.reserveRisk(yes() ? 0 : within(0.0001, 0.5)).build();
    }

    Margins margins() {
      return Margins.builder()
          .designDays(within(1, 7))
          .pressureLeft(Pressure.ofPsi(within(1, 80)))
          .build();
    }

    Dealer dealer(CurrencyUnit currency) {
      Dealer.Builder dealer =
          Dealer.named(name())
              .contact(List.of(name(), name(), name()).subList(0, whole(0, 3)))
              .license(name())
              .accent("#0a0B0c")
              .validDays(whole(1, 365))
              .currency(currency)
              .locale(locale())
              .place(place())
              .paper(one(Dealer.Paper.class))
              .units(one(UnitSystem.class))
              .appendix(yes())
              .homeSale(
                  new HomeSale(
                      yes(), yes(), yes() ? LocalText.NONE : LocalText.NONE.with("es", name())));
      if (yes()) {
        dealer.terms(name()).terms(Locale.FRENCH, name()).logo(logo());
        dealer.pages(List.of(ownPage("van.png"), ownPage("tap.png")));
        dealer.offerText(one(OfferText.class), LocalText.of(text()).with("es", name()));
      }
      if (yes()) {
        dealer.servicePrices(
            new ServicePrices(
                yes() ? Optional.of(money(currency)) : Optional.empty(),
                yes() ? Optional.of(money(currency)) : Optional.empty()));
      }
      return dealer.build();
    }

    OwnPage ownPage(String file) {
      Logo picture = yes() ? Logo.of(file, logo().content()) : null;
      LocalText title = new LocalText(text(), Map.of("fr", name()));
      LocalText shown = picture == null ? LocalText.NONE : LocalText.of(name());
      return new OwnPage(title, LocalText.of(text()), picture, shown);
    }

    Logo logo() {
      BufferedImage image = new BufferedImage(5, 4, BufferedImage.TYPE_INT_ARGB);
      image.setRGB(1, 1, random.nextInt());
      return Logo.of("logo.png", Pictures.png(image));
    }

    Job job() {
      CurrencyUnit currency = currency();
      Resin own = ownResin();
      Tariff first = tariff("T1", currency);
      List<Offer> offers = List.of(offer("U1", own, currency), offer("U2", own, currency));
      return Job.of(
              PriceList.builder(offers)
                  .items(items(currency))
                  .ways(ways(currency))
                  .terms(terms())
                  .limits(limits())
                  .margins(margins())
                  .build())
          .dealer(dealer(currency))
          .tariffs(List.of(first, tariff("T2", currency)))
          .home(new QuotedHome(site("A1", own), first).recorded(record()))
          .home(new QuotedHome(site("B2", own), tariff("T3", currency)).reading(locale()))
          .build();
    }
  }

  /** Field by field; a vessel that is the usual one may have been named or not. */
  private static void same(Job read, Job written) {
    assertThat(read)
        .usingRecursiveComparison(
            RecursiveComparisonConfiguration.builder()
                .withIgnoreAllOverriddenEquals(true)
                .withEqualsForType(Double::equals, Double.class)
                .withIgnoredFieldsMatchingRegexes(".*\\.(lines|set\\.vessel)|origin")
                .build())
        .isEqualTo(written);
    assertThat(read.prices().offers())
        .extracting(offer -> offer.softener().vessel())
        .isEqualTo(
            written.prices().offers().stream().map(offer -> offer.softener().vessel()).toList());
  }

  @Property(tries = 60)
  void whatIsWrittenIsReadBackEqual(@ForAll long seed) {
    Job job = new Chance(new Random(seed)).job();

    JobReading reading = JobFolder.read(job.files());

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.notes()).doesNotContain(Note.BUILT_IN_UNITS, Note.PLACEHOLDER_PRICES);
    same(reading.job().orElseThrow(), job);
  }

  @Test
  void theDemoTownIsWrittenAndReadBackEqual() {
    Job town = JobFolder.read(Path.of("../samples/job")).job().orElseThrow();

    Job again = JobFolder.read(town.files()).job().orElseThrow();

    same(again, town);
    assertThat(again.compare(again.homes().get(2)).candidates())
        .extracting(candidate -> candidate.life().total())
        .isEqualTo(
            town.compare(town.homes().get(2)).candidates().stream()
                .map(candidate -> candidate.life().total())
                .toList());
  }

  @Test
  void aJobInMemoryIsPassedOnWithOneHomeAlone() throws IOException {
    Job job = new Chance(new Random(7)).job();

    var texts = JobExcerpt.of(job.files(), job.dealer(), job.home("A1").orElseThrow());
    Job carried = JobFolder.read(JobFiles.of(texts)).job().orElseThrow();

    assertThat(carried.homes()).hasSize(1);
    assertThat(texts.get("sites.csv")).doesNotContain("B2");
    assertThat(carried.dealer()).isEqualTo(job.dealer());
    assertThat(carried.home("B2")).isEmpty();
  }

  @Test
  void aJobWithPlaceholderPricesNeedsNoTariffs() {
    CurrencyUnit usd = CurrencyUnit.USD;
    Site site = new Chance(new Random(3)).site("A", ShippedResins.STANDARD_MESH);
    Job job =
        Job.of(PriceList.of(BuiltInOffers.all(usd)))
            .home(new QuotedHome(site, Tariff.placeholder(usd)))
            .build();

    assertThat(job.tariffs()).isEmpty();
    assertThat(job.files().has("tariffs.csv")).isFalse();
    same(JobFolder.read(job.files()).job().orElseThrow(), job);
  }

  @Test
  void whatNoFileCanHoldIsRefusedWithItsPlace() {
    Offer offer = BuiltInOffers.all(CurrencyUnit.USD).get(0);
    Job lines =
        Job.of(PriceList.of(List.of(offer))).dealer(Dealer.named("two\nlines").build()).build();
    Resin fitted = Resin.of("fitted", "Fitted", ShippedResins.STANDARD_GEL.curve());
    Softener softener = Softener.withResin("U", Volume.ofCubicFeet(1)).resin(fitted).build();
    Job curve = Job.of(PriceList.of(List.of(Offer.unpriced(softener, CurrencyUnit.USD)))).build();

    assertThatThrownBy(lines::files)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("dealer.properties, column name")
        .hasMessageContaining("line break");
    assertThatThrownBy(curve::files)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"fitted\" is no table");
  }

  @Test
  void partsThatDoNotAgreeAreNoJob() {
    Chance chance = new Chance(new Random(5));
    CurrencyUnit usd = CurrencyUnit.USD;
    PriceList prices = PriceList.of(BuiltInOffers.all(usd));
    QuotedHome home = new QuotedHome(chance.site("A", chance.ownResin()), chance.tariff("T", usd));
    QuotedHome other = new QuotedHome(chance.site("B", chance.ownResin()), chance.tariff("T", usd));

    assertThatThrownBy(Job.of(prices).home(home).home(home)::build)
        .hasMessage("two homes have the id \"a\"");
    assertThatThrownBy(Job.of(prices).home(home).home(other)::build)
        .hasMessage("two tariffs have the id \"T\"");
    assertThatThrownBy(
            Job.of(prices).dealer(Dealer.named("D").currency(CurrencyUnit.CAD).build())::build)
        .hasMessageContaining("USD")
        .hasMessageContaining("CAD");
  }
}

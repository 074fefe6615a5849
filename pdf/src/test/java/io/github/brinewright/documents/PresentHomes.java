package io.github.brinewright.documents;

import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.params.provider.Arguments;

/** Homes with a softener already, at the prices of the invented town. */
final class PresentHomes {
  static final ServicePrices PRICES =
      ServicePrices.of(Money.parse("USD 280"), Money.parse("USD 95"));

  static final String CLOCK_FROM_RATING = "clock set from the rating";
  static final String SIX_BECAME_TWO = "never changed since six became two";
  static final String WITHOUT_IRON = "meter with hardness set without iron";
  static final String SALT_HUNGRY = "salt-hungry";
  static final String RIGHT = "right as it is";
  static final String POTASSIUM = "potassium in a cold cellar";
  static final String EVERYTHING = "everything at once";
  static final String WRONG_HOUR = "hour alone";
  static final String LEAK = "right, but much salt bought";
  static final String READ = "with readings";
  static final String READ_SHORTLY = "with readings of five days";
  static final String STATED = "use known";
  static final String SALT_TELLS = "use told by salt";

  private static final Map<String, Site> SITES = sites();
  private static final Map<String, ServiceStudy> STUDIES = new ConcurrentHashMap<>();

  private PresentHomes() {}

  static Stream<String> ids() {
    return SITES.keySet().stream();
  }

  static Stream<Arguments> idsAndLanguages() {
    return ids().flatMap(id -> DemoTown.LANGUAGES.stream().map(tag -> Arguments.of(id, tag)));
  }

  /** One of each layout: with every column, with one alone, crowded, and set small. */
  static Stream<Arguments> manyKinds() {
    return Stream.of(CLOCK_FROM_RATING, RIGHT, POTASSIUM, EVERYTHING, WRONG_HOUR)
        .flatMap(id -> DemoTown.LANGUAGES.stream().map(tag -> Arguments.of(id, tag)));
  }

  static Site site(String id) {
    return SITES.get(id);
  }

  static ServiceStudy study(String id) {
    return STUDIES.computeIfAbsent(id, each -> study(SITES.get(each), prices(each)));
  }

  private static ServicePrices prices(String id) {
    return id.endsWith("unpriced") ? ServicePrices.NONE : PRICES;
  }

  static ServiceStudy study(Site site, ServicePrices prices) {
    Job town = DemoTown.JOB;
    QuotedHome home = new QuotedHome(site, town.homes().get(0).tariff());
    return ServiceStudy.of(town.compare(home), prices);
  }

  private static Map<String, Site> sites() {
    Map<String, Site> all = new LinkedHashMap<>();
    put(
        all,
        CLOCK_FROM_RATING,
        Household.of(4),
        water(18).found(Substance.IRON, mg(0.3)),
        rated(PresentControl.clock(6), 32_000).ageYears(6).salt(each(9)));
    put(
        all,
        SIX_BECAME_TWO,
        Household.of(2),
        water(20),
        rated(PresentControl.clock(3), 48_000)
            .ageYears(9)
            .salt(each(12))
            .saltBought(Mass.ofPounds(1400)));
    put(
        all,
        WITHOUT_IRON,
        Household.of(4),
        water(16).found(Substance.IRON, mg(1.2)).found(Substance.MANGANESE, mg(0.1)),
        PresentSoftener.of(PresentControl.metered(gpg(16), grains(25_600)))
            .resinVolume(Volume.ofCubicFeet(1.5))
            .rated(grains(48_000))
            .salt(each(9)));
    put(
        all,
        SALT_HUNGRY,
        Household.of(3),
        water(15),
        rated(PresentControl.clock(4), 32_000).salt(refill(12)).ageYears(4).hour(7));
    put(all, RIGHT, Household.of(3), water(18), right().hour(2));
    put(
        all,
        POTASSIUM,
        Household.of(4),
        water(14),
        rated(PresentControl.clock(6), 40_000)
            .regenerant(Regenerant.POTASSIUM_CHLORIDE)
            .salt(refill(6))
            .ageYears(4));
    others(all);
    return all;
  }

  private static void others(Map<String, Site> all) {
    put(all, EVERYTHING, Household.of(6), harsh(), everything());
    put(all, WRONG_HOUR, Household.of(3), water(18), right().hour(11));
    put(all, LEAK, Household.of(3), water(18), right().saltBought(Mass.ofPounds(2400)));
    put(
        all,
        READ,
        Household.of(4),
        water(20),
        rated(PresentControl.clock(5), 32_000).salt(each(8)).readings(ReadMeter.HOUSE, read(120)));
    put(
        all,
        READ_SHORTLY,
        Household.of(4),
        water(20),
        rated(PresentControl.clock(5), 32_000).salt(each(8)).readings(ReadMeter.HOUSE, read(5)));
    put(
        all,
        STATED,
        Household.of(4).knownUse(new KnownUse(Volume.ofGallons(195), 0.128)),
        water(20),
        rated(PresentControl.clock(5), 32_000).salt(each(8)));
    put(all, SALT_TELLS, Household.of(3), water(18), right().saltBought(Mass.ofPounds(700)));
    put(
        all,
        "weekdays and little known",
        Household.of(5),
        water(22),
        rated(PresentControl.weekdays(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY)), 32_000));
    put(
        all,
        "vessel alone, unpriced",
        Household.of(4),
        water(24),
        PresentSoftener.of(PresentControl.clock(7))
            .vessel(new Vessel(Length.ofInches(10), Length.ofInches(54)))
            .salt(new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(18))));
    put(
        all,
        "meter at once, new",
        Household.of(1),
        water(30),
        rated(new ByVolume(gal(500), true, Optional.empty(), Optional.empty()), 30_000)
            .ageYears(0)
            .salt(refill(9)));
    put(
        all,
        "reserve twice",
        Household.of(2),
        water(12),
        rated(new ByVolume(gal(900), false, Optional.of(gal(200)), Optional.of(12)), 32_000)
            .salt(each(9))
            .ageYears(1));
    put(
        all,
        "too small for any clock",
        Household.of(8),
        water(45),
        rated(PresentControl.clock(2), 16_000).salt(each(6)).ageYears(15));
    put(
        all,
        "soft already",
        Household.of(2),
        water(2),
        rated(PresentControl.clock(9), 24_000).salt(each(6)));
  }

  /** Two readings that are so many days apart, with 200 gal a day between them. */
  private static List<MeterReading> read(int days) {
    LocalDate first = LocalDate.of(2026, 3, 1);
    return List.of(
        new MeterReading(first, gal(12_345)),
        new MeterReading(first.plusDays(days), gal(12_345 + 200 * days)));
  }

  /** A meter whose volume suits three people and 18 gpg. */
  private static PresentSoftener.Builder right() {
    return PresentSoftener.of(new ByVolume(gal(850), false, Optional.empty(), Optional.of(14)))
        .resinVolume(Volume.ofCubicFeet(1.5))
        .salt(each(9))
        .ageYears(3);
  }

  private static PresentSoftener.Builder everything() {
    return rated(
            new ByHardness(
                gpg(60), Optional.of(grains(30_000)), false, Optional.of(gal(100)), Optional.of(9)),
            30_000)
        .salt(each(3))
        .ageYears(20)
        .hour(7)
        .saltBought(Mass.ofPounds(4000))
        .hardnessAfter(gpg(8));
  }

  private static WaterAnalysis.Builder harsh() {
    return water(60).found(Substance.IRON, mg(6)).found(Substance.MANGANESE, mg(0.5));
  }

  private static void put(
      Map<String, Site> all,
      String id,
      Household.Builder people,
      WaterAnalysis.Builder water,
      PresentSoftener.Builder present) {
    Customer customer = new Customer("Family of " + id, "12 Weir Street", "Noughtmarl");
    Site site =
        Site.of(id, water.build(), people.bathrooms(2).build())
            .contact(customer)
            .present(present.build())
            .build();
    all.put(id, site);
  }

  private static PresentSoftener.Builder rated(PresentControl control, double grains) {
    return PresentSoftener.of(control).rated(grains(grains));
  }

  private static WaterAnalysis.Builder water(double grains) {
    return WaterAnalysis.ofHardness(gpg(grains))
        .from(WaterSource.PUBLIC_SUPPLY)
        .hardnessBy(HardnessMethod.DROP_TEST)
        .found(Substance.IRON, mg(0))
        .found(Substance.MANGANESE, mg(0));
  }

  private static PresentSalt each(double pounds) {
    return new PresentSalt.EachTime(Mass.ofPounds(pounds));
  }

  private static PresentSalt refill(double minutes) {
    return new PresentSalt.Refill(
        Minutes.toDuration(minutes), Optional.of(FlowRate.ofGallonsPerMinute(0.5)));
  }

  private static Hardness gpg(double grains) {
    return Hardness.ofGrainsPerGallon(grains);
  }

  private static HardnessAmount grains(double grains) {
    return HardnessAmount.ofGrains(grains);
  }

  private static Volume gal(double gallons) {
    return Volume.ofGallons(gallons);
  }

  private static Concentration mg(double perLitre) {
    return Concentration.ofMilligramsPerLitre(perLitre);
  }
}

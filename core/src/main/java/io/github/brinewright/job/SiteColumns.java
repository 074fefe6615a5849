package io.github.brinewright.job;

import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The columns of sites.csv: one row for each home. */
public final class SiteColumns {
  private static final double HIGHEST_GPG = 200;
  private static final double HIGHEST_MG = 17 * HIGHEST_GPG;
  private static final double HIGHEST_FOUND = 50_000;

  static final Typed<Hardness> GPG =
      Typed.number(
              "hardness_gpg",
              0.1,
              HIGHEST_GPG,
              Hardness::ofGrainsPerGallon,
              Hardness::grainsPerGallon)
          .unit("gpg");
  static final Typed<Hardness> MG_PER_L =
      Typed.number(
              "hardness_mg_per_l",
              1,
              HIGHEST_MG,
              Hardness::ofMilligramsPerLitre,
              Hardness::milligramsPerLitre)
          .unit("mg/L");

  /** All of them. */
  static final Columns<SiteDraft, QuotedHome> COLUMNS =
      supply(use(water(customer(new Columns<SiteDraft, QuotedHome>("sites.csv")))));

  private SiteColumns() {}

  /** All columns, those that must be there first. */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<SiteDraft, QuotedHome> customer(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("home")
        .always(Typed.shortName("site_id").needed(), (draft, id) -> draft.id = id, of(Site::id))
        .part("people")
        .always(
            Typed.whole("people", 1, 40).needed(),
            (draft, people) -> draft.people = people,
            ofHousehold(Household::people))
        .part("home")
        .always(
            Typed.text("customer"),
            (draft, name) -> draft.customer = name,
            of(site -> site.contact().name()))
        .add(
            Typed.locale("language"),
            (draft, language) -> draft.language = language,
            QuotedHome::language)
        .add(
            Typed.text("street"),
            (draft, street) -> draft.street = street,
            filled(site -> site.contact().street()))
        .add(
            Typed.text("town"),
            (draft, town) -> draft.town = town,
            filled(site -> site.contact().town()));
  }

  private static Columns<SiteDraft, QuotedHome> water(Columns<SiteDraft, QuotedHome> columns) {
    columns
        .part("water")
        .add(GPG, (draft, hardness) -> draft.hardness = hardness, home -> hardness(home, false))
        .add(MG_PER_L, (draft, hardness) -> draft.hardness = hardness, home -> hardness(home, true))
        .always(
            Typed.choice("water_source", WaterSource.class).usual(WaterSource.PUBLIC_SUPPLY),
            (draft, source) -> draft.water(water -> water.from(source)),
            ofWater(WaterAnalysis::source))
        .add(
            Typed.date("tested_on"),
            (draft, day) -> draft.water(water -> water.date(day)),
            ofWater(WaterAnalysis::date));
    found(columns, "iron_mg_per_l", Substance.IRON);
    found(columns, "dissolved_iron_mg_per_l", Substance.DISSOLVED_IRON);
    found(columns, "manganese_mg_per_l", Substance.MANGANESE);
    columns.add(
        Typed.number("ph", 0, 14),
        (draft, ph) -> draft.water(water -> water.ph(ph)),
        home -> home.site().water().ph().stream().boxed().findFirst());
    found(columns, "tds_mg_per_l", Substance.TOTAL_DISSOLVED_SOLIDS);
    found(columns, "sodium_mg_per_l", Substance.SODIUM);
    found(columns, "chloride_mg_per_l", Substance.CHLORIDE);
    found(columns, "free_chlorine_mg_per_l", Substance.FREE_CHLORINE);
    found(columns, "hydrogen_sulfide_mg_per_l", Substance.HYDROGEN_SULFIDE);
    return columns
        .add(
            Typed.number(
                    "temperature_f", 33, 120, Temperature::ofFahrenheit, Temperature::fahrenheit)
                .unit("°F"),
            (draft, temperature) -> draft.water(water -> water.temperature(temperature)),
            ofWater(WaterAnalysis::temperature))
        .always(
            Typed.choice("bacteria", BacteriaResult.class).usual(BacteriaResult.NOT_DONE),
            (draft, bacteria) -> draft.water(water -> water.bacteria(bacteria)),
            ofWater(WaterAnalysis::bacteria))
        .always(
            Typed.number(
                    "target_hardness_gpg",
                    0,
                    10,
                    Hardness::ofGrainsPerGallon,
                    Hardness::grainsPerGallon)
                .unit("gpg")
                .usual(Hardness.ofGrainsPerGallon(0)),
            (draft, target) -> draft.target = target,
            of(Site::target));
  }

  private static void found(
      Columns<SiteDraft, QuotedHome> columns, String name, Substance substance) {
    columns.add(
        Typed.number(
                name,
                0,
                HIGHEST_FOUND,
                Concentration::ofMilligramsPerLitre,
                Concentration::milligramsPerLitre)
            .unit("mg/L"),
        (draft, amount) -> draft.water(water -> water.found(substance, amount)),
        ofWater(water -> water.found(substance)));
  }

  /** A hardness stands in the column that writes it exactly, or else shorter. */
  private static Optional<Hardness> hardness(QuotedHome home, boolean milligrams) {
    Hardness hardness = home.site().water().hardness();
    String gpg = GPG.format().write(hardness);
    String mg = MG_PER_L.format().write(hardness);
    boolean gpgIsExact = Hardness.ofGrainsPerGallon(Double.parseDouble(gpg)).equals(hardness);
    boolean mgIsExact = Hardness.ofMilligramsPerLitre(Double.parseDouble(mg)).equals(hardness);
    boolean mgIsBetter = mgIsExact && !(gpgIsExact && gpg.length() <= mg.length());
    return Optional.of(hardness).filter(any -> milligrams == mgIsBetter);
  }

  private static Columns<SiteDraft, QuotedHome> use(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("people")
        .always(
            Typed.number("bathrooms", 0.5, 20),
            (draft, number) -> draft.household(household -> household.bathrooms(number)),
            ofHousehold(Household::bathrooms))
        .always(
            Typed.number("use_gal_per_person_day", 10, 400, Volume::ofGallons, Volume::gallons)
                .unit("gal")
                .usual(Household.USUAL_PER_PERSON),
            (draft, daily) -> draft.household(household -> household.perPersonDaily(daily)),
            ofHousehold(Household::perPersonDaily))
        .add(
            Typed.number("bill_gal", 10, 1_000_000, Volume::ofGallons, Volume::gallons).unit("gal"),
            (draft, billed) -> draft.billed = billed,
            home -> home.site().household().bill().map(Bill::billed))
        .add(
            Typed.whole("bill_days", 7, 190).unit("days"),
            (draft, days) -> draft.billDays = days,
            home -> home.site().household().bill().map(Bill::days))
        .always(
            Typed.choice("softened", SoftenedShare.class).usual(SoftenedShare.WHOLE_HOUSE),
            (draft, share) -> draft.household(household -> household.softened(share)),
            ofHousehold(Household::softened))
        .always(
            Typed.whole("away_days_per_year", 0, 300).unit("days").usual(0),
            (draft, days) -> draft.household(household -> household.away(days)),
            ofHousehold(Household::awayDays))
        .always(
            Typed.whole("guests", 0, 40).usual(0),
            (draft, guests) -> draft.guests = guests,
            ofHousehold(Household::guests))
        .always(
            Typed.whole("guest_days_per_year", 0, 300).unit("days").usual(0),
            (draft, days) -> draft.guestDays = days,
            ofHousehold(Household::guestDays))
        .part("fixtures")
        .add(
            Typed.counts("fixtures", 100, Fixture.class),
            (draft, counts) -> draft.household(household -> counts.forEach(household::fixture)),
            home -> Optional.of(home.site().household().fixtures()).filter(all -> !all.isEmpty()));
  }

  private static Columns<SiteDraft, QuotedHome> supply(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("supply")
        .add(
            Typed.number("pressure_psi", 5, 200, Pressure::ofPsi, Pressure::psi).unit("psi"),
            (draft, pressure) -> draft.pressure = pressure,
            of(site -> site.supply().pressure()))
        .add(
            Typed.number(
                    "flow_gpm", 0.5, 200, FlowRate::ofGallonsPerMinute, FlowRate::gallonsPerMinute)
                .unit("gpm"),
            (draft, flow) -> draft.flow = flow,
            of(site -> site.supply().flow()))
        .always(
            Typed.reference("tariff_id"),
            (draft, id) -> draft.tariffId = id,
            home -> home.tariff().id())
        .always(
            allowance("iron_allowance_gpg").usual(FoulingAllowances.USUAL.iron()),
            (draft, allowance) -> draft.iron = allowance,
            of(site -> site.allowances().iron()))
        .always(
            allowance("manganese_allowance_gpg").usual(FoulingAllowances.USUAL.manganese()),
            (draft, allowance) -> draft.manganese = allowance,
            of(site -> site.allowances().manganese()));
  }

  private static Typed<FoulingAllowance> allowance(String name) {
    return Typed.number(
            name,
            0,
            20,
            FoulingAllowance::ofGrainsPerGallonPerMilligramPerLitre,
            FoulingAllowance::grainsPerGallonPerMilligramPerLitre)
        .unit("gpg");
  }

  private static <T> Function<QuotedHome, T> of(Function<Site, T> get) {
    return home -> get.apply(home.site());
  }

  private static <T> Function<QuotedHome, T> ofWater(Function<WaterAnalysis, T> get) {
    return home -> get.apply(home.site().water());
  }

  private static <T> Function<QuotedHome, T> ofHousehold(Function<Household, T> get) {
    return home -> get.apply(home.site().household());
  }

  private static Function<QuotedHome, Optional<String>> filled(Function<Site, String> get) {
    return home -> Optional.of(get.apply(home.site())).filter(text -> !text.isBlank());
  }
}

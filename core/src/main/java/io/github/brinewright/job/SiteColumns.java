package io.github.brinewright.job;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Supply;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The columns of sites.csv: one row for each home. */
public final class SiteColumns {
  /** Name of the column of the revision. */
  static final String REVISION = "revision";

  /** All of them. */
  static final Columns<SiteDraft, QuotedHome> COLUMNS =
      PresentColumns.add(
          supply(
              use(
                  WaterColumns.add(
                      record(customer(new Columns<SiteDraft, QuotedHome>("sites.csv")))))));

  private SiteColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<SiteDraft, QuotedHome> customer(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("home")
        .always(Typed.shortName("site_id").needed(), (draft, id) -> draft.id = id, of(Site::id))
        .part("people")
        .always(
            Typed.whole("people", Household.PEOPLE).needed(),
            (draft, people) -> draft.people = people,
            ofHousehold(Household::people))
        .part("home")
        .always(
            Typed.anyScript("customer"),
            (draft, name) -> draft.customer = name,
            of(site -> site.contact().name()))
        .add(
            Typed.text("customer_latin"),
            (draft, name) -> draft.customerLatin = name,
            filled(site -> site.contact().latin()))
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
            filled(site -> site.contact().town()))
        .add(
            Typed.text("phone"),
            (draft, phone) -> draft.phone = phone,
            filled(site -> site.contact().phone()))
        .add(
            Typed.text("email"),
            (draft, email) -> draft.email = email,
            filled(site -> site.contact().email()));
  }

  /** What the quote is known by; no form asks for its number and revision, which the office has. */
  private static Columns<SiteDraft, QuotedHome> record(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("")
        .add(
            Typed.text("quote_number"),
            (draft, number) -> draft.quoteNumber = number,
            stated(QuoteRecord::number))
        .add(
            Typed.whole(REVISION, QuoteRecord.REVISION).usual(QuoteRecord.NONE.revision()),
            (draft, revision) -> draft.revision = revision,
            home ->
                Optional.of(home.record())
                    .filter(QuoteRecord::isRevised)
                    .map(QuoteRecord::revision))
        .part("home")
        .add(Typed.text("rep"), (draft, rep) -> draft.rep = rep, stated(QuoteRecord::rep))
        .add(
            Typed.text("notes"), (draft, notes) -> draft.notes = notes, stated(QuoteRecord::notes));
  }

  private static Columns<SiteDraft, QuotedHome> use(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("people")
        .always(
            Typed.number("bathrooms", Household.BATHROOMS),
            (draft, number) -> draft.household(household -> household.bathrooms(number)),
            ofHousehold(Household::bathrooms))
        .always(
            Measures.gallons("use_gal_per_person_day", Household.PER_PERSON)
                .usual(Household.USUAL_PER_PERSON),
            (draft, daily) -> draft.household(household -> household.perPersonDaily(daily)),
            ofHousehold(Household::perPersonDaily))
        .add(
            Measures.gallons("bill_gal", Bill.BILLED),
            (draft, billed) -> draft.billed = billed,
            home -> home.site().household().bill().map(Bill::billed))
        .add(
            Typed.whole("bill_days", Bill.DAYS).unit("days"),
            (draft, days) -> draft.billDays = days,
            home -> home.site().household().bill().map(Bill::days))
        .always(
            Typed.choice("softened", SoftenedShare.class).usual(SoftenedShare.WHOLE_HOUSE),
            (draft, share) -> draft.household(household -> household.softened(share)),
            ofHousehold(Household::softened))
        .always(
            Measures.gpg("target_hardness_gpg", Site.TARGET).usual(Hardness.ofGrainsPerGallon(0)),
            (draft, target) -> draft.target = target,
            of(Site::target))
        .always(
            Typed.yesNo("softer_wanted").usual(false),
            (draft, wanted) -> draft.softerWanted = wanted,
            of(Site::softerWanted))
        .always(
            Typed.whole("away_days_per_year", Household.DAYS_OF_YEAR).unit("days").usual(0),
            (draft, days) -> draft.household(household -> household.away(days)),
            ofHousehold(Household::awayDays))
        .always(
            Typed.whole("guests", Household.GUESTS).usual(0),
            (draft, guests) -> draft.guests = guests,
            ofHousehold(Household::guests))
        .always(
            Typed.whole("guest_days_per_year", Household.DAYS_OF_YEAR).unit("days").usual(0),
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
            Typed.number("pressure_psi", Supply.PRESSURE, Pressure::ofPsi, Pressure::psi)
                .unit("psi"),
            (draft, pressure) -> draft.pressure = pressure,
            of(site -> site.supply().pressure()))
        .add(
            Typed.number(
                    "flowing_pressure_psi", Supply.FLOWING_PRESSURE, Pressure::ofPsi, Pressure::psi)
                .unit("psi"),
            (draft, pressure) -> draft.flowingPressure = pressure,
            of(site -> site.supply().flowingPressure()))
        .add(
            Measures.gpm("flow_gpm", Supply.FLOW),
            (draft, flow) -> draft.flow = flow,
            of(site -> site.supply().flow()))
        .add(
            Measures.gpm("peak_gpm", Household.PEAK_FLOW),
            (draft, flow) -> draft.household(household -> household.peakFlow(flow)),
            ofHousehold(Household::peakFlow))
        .always(
            Typed.number(
                    "brine_tank_temperature_f",
                    33,
                    110,
                    Temperature::ofFahrenheit,
                    Temperature::fahrenheit)
                .unit("°F")
                .usual(Site.USUAL_BRINE_TANK_TEMPERATURE),
            (draft, temperature) -> draft.brineTankTemperature = temperature,
            of(Site::brineTankTemperature))
        .always(Typed.place("place"), (draft, place) -> draft.place = place, of(Site::place))
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
            FoulingAllowances.ALLOWANCE,
            FoulingAllowance::ofGrainsPerGallonPerMilligramPerLitre,
            FoulingAllowance::grainsPerGallonPerMilligramPerLitre)
        .unit("gpg");
  }

  private static <T> Function<QuotedHome, T> of(Function<Site, T> get) {
    return home -> get.apply(home.site());
  }

  private static <T> Function<QuotedHome, T> ofHousehold(Function<Household, T> get) {
    return home -> get.apply(home.site().household());
  }

  private static Function<QuotedHome, Optional<String>> filled(Function<Site, String> get) {
    return home -> Optional.of(get.apply(home.site())).filter(text -> !text.isBlank());
  }

  private static Function<QuotedHome, Optional<String>> stated(Function<QuoteRecord, String> get) {
    return home -> Optional.of(get.apply(home.record())).filter(text -> !text.isBlank());
  }
}

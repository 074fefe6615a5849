package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads sites.csv: one row for each home. */
final class SiteReader {
  static final TableShape SHAPE =
      new TableShape(
          "sites.csv",
          List.of("site_id", "people"),
          List.of(
              "customer",
              "street",
              "town",
              "language",
              "hardness_gpg",
              "hardness_mg_per_l",
              "water_source",
              "iron_mg_per_l",
              "dissolved_iron_mg_per_l",
              "manganese_mg_per_l",
              "tds_mg_per_l",
              "sodium_mg_per_l",
              "chloride_mg_per_l",
              "free_chlorine_mg_per_l",
              "hydrogen_sulfide_mg_per_l",
              "ph",
              "temperature_f",
              "bacteria",
              "tested_on",
              "bathrooms",
              "use_gal_per_person_day",
              "bill_gal",
              "bill_days",
              "fixtures",
              "softened",
              "target_hardness_gpg",
              "away_days_per_year",
              "guests",
              "guest_days_per_year",
              "pressure_psi",
              "flow_gpm",
              "iron_allowance_gpg",
              "manganese_allowance_gpg",
              "tariff_id"));

  private static final double HIGHEST_GPG = 200;
  private static final Map<String, Substance> SUBSTANCES =
      Map.of(
          "iron_mg_per_l", Substance.IRON,
          "dissolved_iron_mg_per_l", Substance.DISSOLVED_IRON,
          "manganese_mg_per_l", Substance.MANGANESE,
          "tds_mg_per_l", Substance.TOTAL_DISSOLVED_SOLIDS,
          "sodium_mg_per_l", Substance.SODIUM,
          "chloride_mg_per_l", Substance.CHLORIDE,
          "free_chlorine_mg_per_l", Substance.FREE_CHLORINE,
          "hydrogen_sulfide_mg_per_l", Substance.HYDROGEN_SULFIDE);

  private final Map<String, Tariff> tariffs;
  private final Tariff otherwise;
  private int refused;

  /** Sites may name one of the tariffs; where they name none, {@code otherwise} holds. */
  SiteReader(Map<String, Tariff> tariffs, Tariff otherwise) {
    this.tariffs = tariffs;
    this.otherwise = otherwise;
  }

  /** How many rows had errors. */
  int refused() {
    return refused;
  }

  List<QuotedHome> read(JobFiles files, List<Problem> problems) {
    int before = problems.size();
    List<QuotedHome> visits = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : Table.read(files, SHAPE, problems)) {
      String id = row.id("site_id");
      if (!row.broken() && !ids.add(id.toLowerCase(Locale.ROOT))) {
        row.note("site_id", id, "stands in an earlier row too; each home needs its own id");
      }
      Optional<QuotedHome> visit = visit(row, id);
      refused += visit.isPresent() ? 0 : 1;
      visit.ifPresent(visits::add);
    }
    if (visits.isEmpty() && problems.size() == before) {
      problems.add(TextFile.whole(SHAPE.file(), "has no home; add a row for each"));
    }
    return visits;
  }

  private Optional<QuotedHome> visit(Row row, String id) {
    String customer = row.text("customer").orElse(id);
    String street = row.text("street").orElse("");
    String town = row.text("town").orElse("");
    WaterAnalysis water = water(row);
    Household household = household(row);
    Supply supply = supply(row);
    FoulingAllowances allowances =
        new FoulingAllowances(
            allowance(row, "iron_allowance_gpg", FoulingAllowances.USUAL.iron()),
            allowance(row, "manganese_allowance_gpg", FoulingAllowances.USUAL.manganese()));
    Hardness target = Hardness.ofGrainsPerGallon(row.number("target_hardness_gpg", 0, 10, 0));
    Optional<Locale> language = Languages.in(row, "language");
    Optional<Tariff> tariff =
        row.has("tariff_id") ? row.reference("tariff_id", tariffs, "") : Optional.of(otherwise);
    return tariff.flatMap(
        prices ->
            row.build(
                () ->
                    new QuotedHome(
                        Site.of(id, water, household)
                            .contact(new Customer(customer, street, town))
                            .supply(supply)
                            .allowances(allowances)
                            .target(target)
                            .build(),
                        prices,
                        language)));
  }

  private static Supply supply(Row row) {
    Supply supply = Supply.NOT_MEASURED;
    OptionalDouble psi = row.number("pressure_psi", 5, 200);
    if (psi.isPresent()) {
      supply = supply.withPressure(Pressure.ofPsi(psi.getAsDouble()));
    }
    OptionalDouble gpm = row.number("flow_gpm", 0.5, 200);
    return gpm.isPresent()
        ? supply.withFlow(FlowRate.ofGallonsPerMinute(gpm.getAsDouble()))
        : supply;
  }

  private static FoulingAllowance allowance(Row row, String column, FoulingAllowance usual) {
    return FoulingAllowance.ofGrainsPerGallonPerMilligramPerLitre(
        row.number(column, 0, 20, usual.grainsPerGallonPerMilligramPerLitre()));
  }

  private static WaterAnalysis water(Row row) {
    WaterAnalysis.Builder water = WaterAnalysis.ofHardness(hardness(row));
    row.choice("water_source", WaterSource.class).ifPresent(water::from);
    row.choice("bacteria", BacteriaResult.class).ifPresent(water::bacteria);
    SUBSTANCES.forEach(
        (column, substance) ->
            row.ifNumber(
                column,
                0,
                50_000,
                mg -> water.found(substance, Concentration.ofMilligramsPerLitre(mg))));
    row.ifNumber("ph", 0, 14, water::ph);
    row.ifNumber("temperature_f", 33, 120, f -> water.temperature(Temperature.ofFahrenheit(f)));
    row.date("tested_on").ifPresent(water::date);
    return water.build();
  }

  private static Hardness hardness(Row row) {
    boolean grains = row.has("hardness_gpg");
    if (grains == row.has("hardness_mg_per_l")) {
      row.note(
          "hardness_gpg",
          "",
          "is needed, or hardness_mg_per_l instead; fill exactly one of the two:"
              + " without a hardness nothing can be sized");
      return Hardness.ofGrainsPerGallon(1);
    }
    return grains
        ? Hardness.ofGrainsPerGallon(row.required("hardness_gpg", 0.1, HIGHEST_GPG))
        : Hardness.ofMilligramsPerLitre(row.required("hardness_mg_per_l", 2, 17 * HIGHEST_GPG));
  }

  private static Household household(Row row) {
    double people = row.required("people", 1, 40);
    if (people != Math.rint(people)) {
      row.note("people", String.valueOf(people), "must be a whole number from 1 to 40");
    }
    Household.Builder household = Household.of((int) Math.max(1, people));
    row.ifNumber("bathrooms", 0.5, 20, household::bathrooms);
    row.ifNumber(
        "use_gal_per_person_day", 10, 400, g -> household.perPersonDaily(Volume.ofGallons(g)));
    row.choice("softened", SoftenedShare.class).ifPresent(household::softened);
    row.counts("fixtures", Fixture.class, 100).forEach(household::fixture);
    household.away((int) row.number("away_days_per_year", 0, 300, 0));
    household.guests(
        (int) row.number("guests", 0, 40, 0), (int) row.number("guest_days_per_year", 0, 300, 0));
    if (row.has("bill_gal") || row.has("bill_days")) {
      double gallons = row.required("bill_gal", 10, 1_000_000);
      double days = row.required("bill_days", 7, 190);
      household.bill(new Bill(Volume.ofGallons(gallons), (int) days));
    }
    return household.build();
  }
}

package io.github.brinewright.documents;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the form of a site visit must ask, and begin with. */
final class ExpectedForm extends Expected {
  private static final Map<String, List<String>> PARTS =
      Map.of(
          "form.home",
          List.of(
              "site_id",
              "customer",
              "customer_latin",
              "language",
              "street",
              "town",
              "phone",
              "email",
              "rep",
              "notes"),
          "form.treated",
          List.of(
              "treated_hardness_gpg",
              "treated_iron_mg_per_l",
              "treated_manganese_mg_per_l",
              "treated_ph"),
          "form.people",
          List.of(
              "people",
              "bathrooms",
              "use_gal_per_person_day",
              "bill_gal",
              "bill_days",
              "softened",
              "target_hardness_gpg",
              "softer_wanted",
              "away_days_per_year",
              "guests",
              "guest_days_per_year"),
          "form.supply",
          List.of(
              "pressure_psi",
              "flowing_pressure_psi",
              "flow_gpm",
              "peak_gpm",
              "brine_tank_temperature_f",
              "place",
              "tariff_id",
              "iron_allowance_gpg",
              "manganese_allowance_gpg"));

  private final Map<String, String> cells;
  private final List<Tariff> tariffs;

  ExpectedForm(Map<String, String> cells, List<Tariff> tariffs, Wording words) {
    super(words);
    this.cells = cells;
    this.tariffs = tariffs;
    for (String column : SiteColumns.all().stream().map(Column::name).toList()) {
      if (!Set.of("fixtures", "quote_number", "revision").contains(column)) {
        value(part(column) + "/" + column, words.text("form.field." + column), content(column));
      }
    }
    for (Fixture fixture : Fixture.values()) {
      String name = fixture.name().toLowerCase(Locale.ROOT);
      value("form.fixtures/fixtures_" + name, term(fixture), "TEXT [" + count(name) + "]");
    }
  }

  private static String part(String column) {
    if (column.startsWith("present_")) {
      return "form.present";
    }
    return PARTS.entrySet().stream()
        .filter(part -> part.getValue().contains(column))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("form.water");
  }

  private String content(String column) {
    String begins = " [" + cells.getOrDefault(column, "") + "]";
    return switch (column) {
      case "site_id", "people" -> "TEXT *" + begins;
      case "water_source" -> "CHOICE" + begins + choices(WaterSource.values());
      case "hardness_method" -> "CHOICE" + begins + choices(HardnessMethod.values());
      case "iron_clear_at_tap", "softer_wanted" ->
          "CHOICE"
              + begins
              + choices(
                  Stream.of(
                      "yes=" + words.text("term.YesNo.YES"), "no=" + words.text("term.YesNo.NO")));
      case "bacteria", "e_coli", "iron_bacteria" ->
          "CHOICE" + begins + choices(BacteriaResult.values());
      case "present_control" -> "CHOICE" + begins + choices(Control.values());
      case "present_regenerant" -> "CHOICE" + begins + choices(Regenerant.values());
      case "present_read_meter" -> "CHOICE" + begins + choices(ReadMeter.values());
      case "present_resin_id" -> "CHOICE" + begins + choices(resins());
      case "softened" -> "CHOICE" + begins + choices(SoftenedShare.values());
      case "language" -> "CHOICE" + begins + " = |en-US=English|es-US=español|fr-CA=français";
      case "tariff_id" ->
          "CHOICE" + begins + choices(tariffs.stream().map(each -> each.id() + "=" + each.name()));
      default -> "TEXT" + begins;
    };
  }

  private Stream<String> resins() {
    return Stream.of("standard-gel", "standard-mesh", "fine-mesh", "general-purpose")
        .map(id -> id + "=" + words.text("form.resin." + id));
  }

  private String choices(Enum<?>[] constants) {
    return choices(
        Stream.of(constants).map(each -> each.name().toLowerCase(Locale.ROOT) + "=" + term(each)));
  }

  private static String choices(Stream<String> choices) {
    return Stream.concat(Stream.of(" = "), choices).collect(Collectors.joining("|"));
  }

  /** How many of a kind "2 shower 3 lavatory" counts. */
  private String count(String name) {
    String[] parts = cells.getOrDefault("fixtures", "").split(" ");
    int count = 0;
    for (int i = 1; i < parts.length; i += 2) {
      count += parts[i].equals(name) ? Integer.parseInt(parts[i - 1]) : 0;
    }
    return count == 0 ? "" : String.valueOf(count);
  }
}

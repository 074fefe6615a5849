package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Both ends of the range of every column, and one step beyond each, through the whole reader. */
class ColumnEdgesTest {
  private static final List<Locale> LANGUAGES =
      List.of(Locale.US, Locale.forLanguageTag("es-US"), Locale.CANADA_FRENCH);

  /** A row that is free of errors, by file. */
  private static final Map<String, Map<String, String>> GOOD =
      Map.of(
          "sites.csv",
          Map.of("site_id", "A", "people", "3", "hardness_gpg", "200"),
          "units.csv",
          Map.of("unit_id", "U", "price", "1", "resin_ft3", "1", "dosages_lb_per_ft3", "6"),
          "items.csv",
          Map.of("item_id", "I", "kind", "labour", "price", "10"),
          "payments.csv",
          Map.of("way_id", "P", "kind", "credit", "months", "12"),
          "resins.csv",
          Map.of("resin_id", "R", "dosage_lb_per_ft3", "6", "capacity_grains_per_ft3", "20000"),
          "tariffs.csv",
          Map.of("tariff_id", "T", "water_price_per_1000_gal", "4"),
          "dealer.properties",
          Map.of("name", "Weir Street Water"));

  private static final Map<String, String> METER = Map.of("present_control", "metered");
  private static final Map<String, String> CLOCK =
      Map.of("present_control", "clock", "present_days", "7");

  /** Cells that a column needs beside it. */
  private static final Map<String, String> TREATMENT =
      Map.of("kind", "treatment", "treatment_position", "metals");

  private static Map<String, String> with(Map<String, String> row, String name, String value) {
    Map<String, String> all = new HashMap<>(row);
    all.put(name, value);
    return all;
  }

  private static final Map<String, Map<String, String>> WITH =
      Map.ofEntries(
          Map.entry("bill_gal", Map.of("bill_days", "60")),
          Map.entry("bill_days", Map.of("bill_gal", "6000")),
          Map.entry("hardness_mg_per_l", Map.of("hardness_gpg", "")),
          Map.entry("rated_grains", Map.of("dosages_lb_per_ft3", "")),
          Map.entry("vessel_diameter_in", Map.of("vessel_height_in", "60")),
          Map.entry("vessel_height_in", Map.of("vessel_diameter_in", "10")),
          Map.entry("brine_tank_diameter_in", Map.of("brine_tank_height_in", "30")),
          Map.entry("brine_tank_height_in", Map.of("brine_tank_diameter_in", "18")),
          Map.entry("service_flow_gpm", Map.of("peak_flow_gpm", "10")),
          Map.entry("peak_flow_gpm", Map.of("service_flow_gpm", "5")),
          Map.entry("treated_iron_mg_per_l", Map.of("treated_hardness_gpg", "18")),
          Map.entry("treated_manganese_mg_per_l", Map.of("treated_hardness_gpg", "18")),
          Map.entry("treated_ph", Map.of("treated_hardness_gpg", "18")),
          Map.entry("present_days", Map.of("present_control", "clock")),
          Map.entry("present_volume_gal", METER),
          Map.entry("present_set_hardness_gpg", METER),
          Map.entry(
              "present_set_capacity_grains",
              Map.of("present_control", "metered", "present_set_hardness_gpg", "20")),
          Map.entry(
              "present_reserve_gal",
              Map.of("present_control", "metered", "present_volume_gal", "100000")),
          Map.entry("present_rated_grains", CLOCK),
          Map.entry("present_vessel_diameter_in", Map.of("present_vessel_height_in", "60")),
          Map.entry("present_vessel_height_in", Map.of("present_vessel_diameter_in", "10")),
          Map.entry("present_refill_gpm", Map.of("present_refill_min", "10")),
          Map.entry("percent", Map.of("price", "", "kind", "discount")),
          Map.entry("renewal_price", Map.of("renewed_every_years", "5")),
          Map.entry("iron_taken_percent", TREATMENT),
          Map.entry("manganese_taken_percent", TREATMENT),
          Map.entry("hydrogen_sulfide_taken_percent", TREATMENT),
          Map.entry("free_chlorine_taken_percent", TREATMENT),
          Map.entry("chloramine_taken_percent", TREATMENT),
          Map.entry("turbidity_taken_percent", TREATMENT),
          Map.entry("iron_most_mg_per_l", TREATMENT),
          Map.entry("manganese_most_mg_per_l", TREATMENT),
          Map.entry("hydrogen_sulfide_most_mg_per_l", TREATMENT),
          Map.entry("least_ph", TREATMENT),
          Map.entry("treated_flow_gpm", TREATMENT),
          Map.entry("pressure_loss_psi", TREATMENT),
          Map.entry(
              "ph_after",
              Map.of(
                  "kind",
                  "treatment",
                  "treatment_position",
                  "neutralizer",
                  "neutralizer_mineral",
                  "calcite")),
          Map.entry("backwash_gal", with(TREATMENT, "backwash_every_days", "3")),
          Map.entry("backwash_every_days", with(TREATMENT, "backwash_gal", "50")),
          Map.entry("credit_percent", Map.of("credit_months", "12")),
          Map.entry("water_steps_gal_per_month", Map.of("water_price_per_1000_gal", "4 5")),
          Map.entry("sewer_steps_gal_per_month", Map.of("sewer_price_per_1000_gal", "4 5")));

  static Stream<Arguments> columns() {
    return AllColumns.list().stream()
        .filter(column -> column.range().isPresent())
        .map(column -> Arguments.of(column.file() + " " + column.name(), column));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("columns")
  void bothEndsAreTakenAndOneStepBeyondIsRefused(String name, Column column) {
    Column.Ends bounds = column.bounds();
    BigDecimal step = column.kind() == Column.Kind.WHOLE ? BigDecimal.ONE : new BigDecimal("0.001");
    if (column.kind() == Column.Kind.COUNTS) {
      step = BigDecimal.ONE;
    }
    BigDecimal low = BigDecimal.valueOf(bounds.low());
    BigDecimal high = BigDecimal.valueOf(bounds.high());

    assertThat(inColumn(column, low)).as("the lowest").isEmpty();
    assertThat(inColumn(column, high)).as("the highest").isEmpty();
    refused(column, low.subtract(step));
    refused(column, high.add(step));
  }

  private static void refused(Column column, BigDecimal beyond) {
    List<Problem> problems = inColumn(column, beyond);
    assertThat(problems).as(beyond.toPlainString()).hasSize(1);
    Problem problem = problems.get(0);
    boolean count = column.kind() == Column.Kind.COUNTS;
    assertThat(problem.code())
        .isEqualTo(count ? ProblemCode.NOT_A_COUNT : ProblemCode.OUT_OF_RANGE);
    assertThat(problem.file()).isEqualTo(column.file());
    assertThat(problem.row()).isEqualTo(column.file().endsWith(".csv") ? 2 : 0);
    for (Locale language : LANGUAGES) {
      String[] limits =
          problem.arguments().stream()
              .map(limit -> ((Problem.Argument.Number) limit).value().toPlainString())
              .toArray(String[]::new);
      assertThat(new ProblemWords(language).say(problem))
          .contains(column.name(), "\"" + plain(beyond) + "\"")
          .endsWith(new JobTexts(language).get(problem.code().key(), limits));
    }
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  /** Problems with the column when this stands in it, in a job that is good otherwise. */
  private static List<Problem> inColumn(Column column, BigDecimal value) {
    Map<String, String> row = new HashMap<>(GOOD.get(column.file()));
    row.putAll(WITH.getOrDefault(column.name(), Map.of()));
    row.put(column.name(), cell(column.kind(), plain(value)));
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("sites.csv", csv(SiteColumns.all(), GOOD.get("sites.csv")));
    texts.put(column.file(), text(column, row));
    return JobFolder.read(JobFiles.of(texts)).problems().stream()
        .filter(problem -> problem.column().equals(column.name()))
        .filter(ColumnEdgesTest::ofTheRange)
        .toList();
  }

  private static String cell(Column.Kind kind, String text) {
    return switch (kind) {
      case COUNTS -> text + " shower";
      case READINGS -> "2026-01-03:0 2026-04-02:" + text;
      default -> text;
    };
  }

  /** A resin of one row, a dosage outside its table, tanks: other matters than a range. */
  private static boolean ofTheRange(Problem problem) {
    return problem.code() != ProblemCode.DOSAGE_OUTSIDE_TABLE
        && problem.code() != ProblemCode.TANKS_UNFIT
        && !problem.code().name().startsWith("RESIN_");
  }

  private static String text(Column column, Map<String, String> row) {
    if (column.file().endsWith(".properties")) {
      StringBuilder lines = new StringBuilder();
      row.forEach((key, value) -> lines.append(key).append('=').append(value).append('\n'));
      return lines.toString();
    }
    return csv(
        AllColumns.list().stream().filter(each -> each.file().equals(column.file())).toList(), row);
  }

  private static String csv(List<Column> columns, Map<String, String> row) {
    return Csv.write(columns, List.of(row));
  }
}

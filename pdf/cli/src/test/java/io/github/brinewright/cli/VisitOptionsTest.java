package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteColumns;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every entry of a visit is an option, read as the cell of a row is. */
class VisitOptionsTest extends CommandTest {
  /** One good cell for each column, as a row and as options. */
  private static final Map<String, String> VISIT =
      Map.ofEntries(
          Map.entry("site_id", "home"),
          Map.entry("people", "4"),
          Map.entry("customer", "Ann"),
          Map.entry("customer_latin", "Anne"),
          Map.entry("phone", "555-0142"),
          Map.entry("email", "ann@home.example"),
          Map.entry("rep", "Tamsin Orrel"),
          Map.entry("notes", "Ring twice."),
          Map.entry("language", "fr-CA"),
          Map.entry("street", "1 Weir Street"),
          Map.entry("town", "Lower Town"),
          Map.entry("place", "CA-ON"),
          Map.entry("hardness_gpg", "22"),
          Map.entry("hardness_method", "drop_test"),
          Map.entry("water_source", "private_well"),
          Map.entry("tested_on", "2026-03-31"),
          Map.entry("iron_mg_per_l", "1.8"),
          Map.entry("dissolved_iron_mg_per_l", "1.5"),
          Map.entry("iron_clear_at_tap", "yes"),
          Map.entry("manganese_mg_per_l", "<0.02"),
          Map.entry("ph", "7.2"),
          Map.entry("alkalinity_mg_per_l", "120"),
          Map.entry("carbon_dioxide_mg_per_l", "9"),
          Map.entry("tds_mg_per_l", "640"),
          Map.entry("sodium_mg_per_l", "30"),
          Map.entry("chloride_mg_per_l", "40"),
          Map.entry("nitrate_mg_per_l", "ND"),
          Map.entry("free_chlorine_mg_per_l", "0"),
          Map.entry("chloramine_mg_per_l", "ND"),
          Map.entry("hydrogen_sulfide_mg_per_l", "ND"),
          Map.entry("turbidity_ntu", "0.4"),
          Map.entry("temperature_f", "52"),
          Map.entry("bacteria", "none_found"),
          Map.entry("e_coli", "none_found"),
          Map.entry("iron_bacteria", "none_found"),
          Map.entry("treated_hardness_gpg", "23"),
          Map.entry("treated_iron_mg_per_l", "0.2"),
          Map.entry("treated_manganese_mg_per_l", "ND"),
          Map.entry("treated_ph", "7.4"),
          Map.entry("bathrooms", "2.5"),
          Map.entry("use_gal_per_person_day", "70"),
          Map.entry("bill_gal", "9000"),
          Map.entry("bill_days", "60"),
          Map.entry("softened", "hot_water"),
          Map.entry("target_hardness_gpg", "2"),
          Map.entry("softer_wanted", "no"),
          Map.entry("away_days_per_year", "14"),
          Map.entry("guests", "2"),
          Map.entry("guest_days_per_year", "20"),
          Map.entry("fixtures", "2 shower 3 lavatory"),
          Map.entry("pressure_psi", "55"),
          Map.entry("flowing_pressure_psi", "48"),
          Map.entry("flow_gpm", "12"),
          Map.entry("peak_gpm", "9"),
          Map.entry("brine_tank_temperature_f", "50"),
          Map.entry("tariff_id", "placeholder"),
          Map.entry("iron_allowance_gpg", "3"),
          Map.entry("manganese_allowance_gpg", "5"));

  private static final Set<String> WITH_UNIT = Set.of("hardness_mg_per_l");

  private static String[] options(Map<String, String> cells, String... more) {
    List<String> all = new ArrayList<>(List.of("compare", "--format", "json"));
    cells.forEach(
        (column, cell) -> {
          all.add("--" + column.replaceFirst("_(mg_per_l|psi|gpm|f)$", "").replace('_', '-'));
          all.add(cell);
        });
    all.addAll(Arrays.asList(more));
    return all.toArray(String[]::new);
  }

  @Test
  void everyColumnOfAVisitIsTriedHere() {
    Set<String> columns = new TreeSet<>(visit().map(Column::name).toList());
    columns.removeAll(WITH_UNIT);

    assertThat(new TreeSet<>(VISIT.keySet())).isEqualTo(columns);
  }

  @Test
  void optionsGiveWhatARowGives() throws IOException {
    List<String> columns = List.copyOf(VISIT.keySet());
    Files.deleteIfExists(folder.resolve("units.csv"));
    Files.deleteIfExists(folder.resolve("tariffs.csv"));
    Files.writeString(
        folder.resolve("sites.csv"),
        String.join(",", columns)
            + "\n"
            + String.join(",", columns.stream().map(VISIT::get).toList())
            + "\n");
    assertThat(run("compare", folder.toString(), "--site", "home", "--format", "json"))
        .as(err.toString())
        .isZero();
    String row = out.toString();
    out.getBuffer().setLength(0);

    assertThat(run(options(VISIT))).as(err.toString()).isZero();
    assertThat(out.toString()).isEqualTo(row).contains("\"home\"");
  }

  /**
   * All but the softener in the house, which {@code compare} does not ask for, and what the office
   * numbers.
   */
  private static Stream<Column> visit() {
    return SiteColumns.all().stream()
        .filter(column -> !column.name().startsWith("present_"))
        .filter(column -> !Set.of("quote_number", "revision").contains(column.name()));
  }

  static Stream<Arguments> bounded() {
    return visit()
        .filter(column -> column.range().isPresent())
        .filter(column -> column.kind() != Column.Kind.COUNTS)
        .filter(column -> !WITH_UNIT.contains(column.name()))
        .map(column -> Arguments.of(column.name(), column.bounds().high() + 1));
  }

  @ParameterizedTest
  @MethodSource("bounded")
  void beyondItsRangeAnOptionIsRefusedByItsName(String column, double high) {
    String cell = String.valueOf((int) high);
    Map<String, String> cells = new HashMap<>(VISIT);
    cells.put(column, cell);
    String name = options(Map.of(column, cell))[3];

    assertThat(run(options(cells))).isEqualTo(2);
    assertThat(err.toString())
        .contains(name + ": \"" + cell + "\" must be ")
        .doesNotContain(" " + column + ":", "Exception");
  }

  @ParameterizedTest
  @CsvSource({
    "--hardness 500gpg,'\"500gpg\" must be from 0.1 to 200.0 gpg'",
    "--hardness 700dH,'\"700dH\" must be from 0.1 to 200.0 gpg'",
    "--hardness 0gpg,must be from 0.1",
    "--hardness 20gpg --resin-ft3 1000,'--resin-ft3: \"1000\" must be from 0.1 to 20'",
    "--hardness 20gpg --rated-grains 5,'--rated-grains: \"5\" must be from 1000 to 1000000'",
    "--hardness 20gpg --resin-ft3 1 --refill-gpm 9,'--refill-gpm: \"9\" must be from 0.05 to 5'",
    "--hardness 20gpg --rated-grains 32000 --dosage 6,'--rated-grains: is needed, or --dosage'",
    "--hardness 20gpg --control clock,give its --rated-grains or --resin-ft3 too",
    "--hardness 20gpg --iron trace,'--iron: \"trace\" is not a result; write a number'",
    "--hardness 20gpg --bill-gal 9000,'--bill-days: is empty'",
    "--hardness 20gpg --hardness-gpg 20,say the same",
    "--hardness 20gpg --people 2 --people 3,--people is given more than once",
    "--hardness 20gpg --hardness 21gpg,--hardness is given more than once",
    "--ph 7,'--hardness: is needed, or --hardness-gpg instead'",
    "--hardness-gpg 500,'--hardness-gpg: \"500\" must be from 0.1 to 200'",
    "--hardness 20gpg --tariff-id other,known are: placeholder"
  })
  void whatCannotBeIsRefusedInWords(String options, String words) {
    assertThat(run(("compare " + options).split(" "))).isEqualTo(2);
    assertThat(err.toString()).contains(words).doesNotContain("Exception", "\tat ");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void allThatIsWrongComesOutAtOnce() {
    assertThat(run("compare", "--hardness", "20gpg", "--ph", "15", "--guests", "99")).isEqualTo(2);
    assertThat(err.toString())
        .contains("--ph: \"15\" must be from 0 to 14", "--guests: \"99\" must be from 0 to 40");
  }

  @Test
  void aWellTooFarGoneForASoftenerIsDescribedByOptionsAlone() {
    assertThat(
            run(
                ("compare --hardness 22gpg --water-source private_well --bacteria found --iron 8"
                        + " --hydrogen-sulfide 2 --ph 5.2 --tds 640 --pressure 55 --bill-gal 9000"
                        + " --bill-days 60")
                    .split(" ")))
        .as(err.toString())
        .isZero();
    assertThat(out.toString()).contains("home");
  }

  @Test
  void tanksThatTakeTurnsAreOneUnitToLookAt() {
    assertThat(
            run(
                ("compare --hardness 22gpg --resin-ft3 1 --arrangement twin_alternating"
                        + " --format json")
                    .split(" ")))
        .as(err.toString())
        .isZero();
    assertThat(out.toString()).contains("metered_at_once").doesNotContain("metered_at_night");
  }
}

package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import com.opencsv.CSVReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandLineTest extends CommandTest {
  private static Map<String, Object> json(String text) throws IOException {
    return JSON.std.mapFrom(text);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> site(Map<String, Object> json) {
    return (Map<String, Object>) json.get("site");
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> firstSetup(Map<String, Object> json) {
    return ((List<Map<String, Object>>) json.get("candidates")).get(0);
  }

  /** The bed holds 5.08 days of full use, and 4 days of nine homes in ten like this one. */
  @Test
  void theTradesChainComesOutAsJson() throws IOException {
    int code =
        run(
            "compare --hardness 18gpg --iron 0.8 --manganese 0.2 --people 3 --rated-grains 32000"
                .concat(" --control clock --refill-gpm 0.5 --format json")
                .split(" "));

    Map<String, Object> json = json(out.toString());
    assertThat(code).isZero();
    assertThat(site(json))
        .containsEntry("compensatedHardnessGpg", 22.4)
        .containsEntry("dailyLoadGrains", 5040);
    assertThat(firstSetup(json))
        .containsEntry("usableCapacityGrains", 25600)
        .containsEntry("daysBetweenRegenerations", 4)
        .containsEntry("saltPerRegenerationLb", 7.68)
        .containsEntry("brineRefillMinutes", 5.12)
        .containsEntry("brineRefillMinutesSet", 5.2)
        .containsEntry("saltGivenLb", 7.8);
    assertThat(json).containsKey("recommended");
  }

  @Test
  void aHardnessNeedsItsUnit() {
    assertThat(run("compare", "--hardness", "18", "--people", "3")).isEqualTo(2);
    assertThat(err.toString()).contains("\"18\" is not a hardness", "22gpg");
  }

  @Test
  void hardnessUnitsAgree() throws IOException {
    run("compare", "--hardness", "300mg/L", "--people", "2", "--format", "json");
    Object first = site(json(out.toString())).get("hardnessGpg");
    out.getBuffer().setLength(0);
    run("compare", "--hardness", "30fH", "--people", "2", "--format", "json");
    assertThat(site(json(out.toString())).get("hardnessGpg")).isEqualTo(first);
  }

  @Test
  void wrongUsageEndsWithTwo() {
    assertThat(run()).isEqualTo(2);
    assertThat(run("compare")).isEqualTo(2);
    assertThat(run("compare", folder.toString(), "--hardness", "3gpg")).isEqualTo(2);
    assertThat(run("compare", "--people", "0", "--hardness", "10gpg")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--control", "clock")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--rated-grains", "-5")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--resin-ft3", "1", "--dosage", "99"))
        .isEqualTo(2);
    assertThat(run("propose", folder.toString(), "--all")).isEqualTo(2);
    assertThat(run("propose", folder.toString(), "--out", "x")).isEqualTo(2);
    assertThat(run("compare", folder.resolve("nowhere").toString())).isEqualTo(2);
    assertThat(run("compare", folder.toString(), "--site", "Z9")).isEqualTo(2);
    assertThat(err.toString())
        .contains("no usable home \"Z9\"; homes are: A1, B2")
        .doesNotContain("Exception")
        .doesNotContain("\tat ");
  }

  @Test
  void aFolderInPlaceOfAFileIsExplained() {
    String there = folder.toString();
    assertThat(run("form", there, "--out", there)).isEqualTo(2);
    assertThat(err.toString()).contains(there + " is a folder; name a file in it");
  }

  @Test
  void checkCountsWhatItFinds() throws IOException {
    assertThat(run("check", folder.toString())).isZero();
    assertThat(out.toString()).contains("homes 2");

    Files.writeString(folder.resolve("sites.csv"), SITES + "A1,Cyd,0,4\n");
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(out.toString()).contains("Problems: 2; homes that cannot be done: 1");
  }

  @Test
  void csvHasARowForEachCandidateWithTheNamesOfJson() throws Exception {
    assertThat(run("compare", folder.toString(), "--format", "csv")).isZero();

    try (CSVReader csv = new CSVReader(new StringReader(out.toString()))) {
      List<String[]> rows = csv.readAll();
      assertThat(rows.get(0)).contains("siteId", "saltPerRegenerationLb", "lifeCostTotal");
      assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
      assertThat(rows.size()).isGreaterThan(20);
    }
  }

  @Test
  void simulatedYearsStandInEveryFormat() throws Exception {
    String job = folder.toString();
    assertThat(run("compare", job, "--site", "A1", "--simulate", "20")).isZero();
    assertThat(out.toString()).contains("20 simulated years", "days out of soft");
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--simulate", "20", "--format", "csv")).isZero();
    assertThat(out.toString()).contains("simulatedSaltLb");
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--site", "A1", "--simulate", "20", "--format", "json"))
        .isZero();
    assertThat(firstSetup(json(out.toString()))).containsKeys("year", "undominated");
    assertThat(run("compare", job, "--simulate", "-1")).isEqualTo(2);
  }

  private int settings(Path sheet, String... options) {
    return run(
        Stream.concat(
                Stream.of("settings", folder.toString(), "--site", "A1", "--unit", "bed-1"),
                Stream.concat(Stream.of("--out", sheet.toString()), Stream.of(options)))
            .toArray(String[]::new));
  }

  @Test
  void aSettingsSheetIsWrittenForTheUnitAskedFor() throws IOException {
    Path sheet = folder.resolve("sheets/a1.pdf");
    assertThat(settings(sheet)).isZero();
    assertThat(Files.readAllBytes(sheet)).startsWith("%PDF".getBytes());

    Path none = folder.resolve("none.pdf");
    assertThat(settings(none, "--dosage", "7")).isEqualTo(2);
    assertThat(none).doesNotExist();
    assertThat(err.toString()).contains("there is no unit \"bed-1\" with that dosage");
  }

  @Test
  void theTableMarksTheRecommendedInWords() {
    assertThat(run("compare", folder.toString(), "--site", "A1")).isZero();
    assertThat(out.toString())
        .contains("RECOMMENDED", "keeps all", "compensated hardness 18.0", "verdict: Ready")
        .containsSubsequence("recommended: ", "cheapest that fits: ");
  }

  /** ISO 4217: yen have no decimals, Kuwaiti dinars three. */
  @ParameterizedTest
  @CsvSource({"JPY,180500,¥180", "KWD,361.125,KWD", "EUR,1180.25,€1"})
  void amountsAreInTheCurrencyOfTheDealer(String currency, String price, String printed)
      throws IOException {
    Files.writeString(folder.resolve("dealer.properties"), "currency=" + currency + "\n");
    Files.writeString(
        folder.resolve("units.csv"),
        "unit_id,resin_ft3,dosages_lb_per_ft3,price\nU1,1.5,6," + price + "\n");

    assertThat(run("compare", folder.toString(), "--site", "A1")).as(err.toString()).isZero();
    assertThat(out.toString().lines().filter(line -> line.startsWith("price")))
        .singleElement()
        .asString()
        .contains(printed)
        .doesNotContain("$");
    assertThat(run("propose", folder.toString(), "--all", "--out", folder.toString())).isZero();
  }

  @Test
  void aDosageOutsideItsRangeIsWrongUsage() {
    Path sheet = folder.resolve("s.pdf");
    for (String dosage : new String[] {"-5", "0", "NaN", "Infinity", "1e300"}) {
      assertThat(settings(sheet, "--dosage", dosage)).as(dosage).isEqualTo(2);
    }
    assertThat(sheet).doesNotExist();
    assertThat(err.toString()).doesNotContain("Exception");
  }

  @Test
  void theGridStandsInEveryFormat() throws Exception {
    String job = folder.toString();
    assertThat(run("compare", job, "--site", "A1", "--grid")).isZero();
    assertThat(out.toString())
        .contains("verdict: Ready", "control: clock", "control: metered, at night", "lb/ft³")
        .containsPattern("RC?~? \\d+\\.\\d d");
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--grid", "--format", "csv")).isZero();
    try (CSVReader csv = new CSVReader(new StringReader(out.toString()))) {
      List<String[]> rows = csv.readAll();
      assertThat(rows.get(0)).startsWith("siteId", "siteVerdict", "unitId").endsWith("marks");
      assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
      assertThat(rows.stream().filter(row -> row[row.length - 1].contains("recommended")))
          .hasSize(2);
    }
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--site", "A1", "--format", "json")).isZero();
    Map<String, Object> json = json(out.toString());
    assertThat((List<?>) json.get("grid")).hasSameSizeAs((List<?>) json.get("candidates"));
  }

  @Test
  void theVerdictComesFirstWithItsReasons() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,customer,hardness_gpg,people,water_source,bacteria,iron_mg_per_l\n"
            + "W1,Ann,18,3,private_well,found,8\nS1,Ben,3,3,public_supply,,\n");
    assertThat(run("compare", folder.toString(), "--site", "W1")).isZero();
    assertThat(out.toString())
        .containsSubsequence("verdict: Treat first; no option is shown", "what would change it:")
        .doesNotContain("RECOMMENDED", "recommended:");
    out.getBuffer().setLength(0);
    assertThat(run("compare", folder.toString(), "--site", "S1", "--format", "json")).isZero();
    Map<String, Object> json = json(out.toString());
    assertThat(site(json)).containsEntry("verdict", "soft_enough");
    assertThat(json).containsEntry("recommended", null).containsEntry("cheapestThatFits", null);
    out.getBuffer().setLength(0);
    assertThat(run("propose", folder.toString(), "--all", "--out", folder.toString())).isZero();
    assertThat(out.toString())
        .contains("W1: Treat first (bacteria-found, iron-above-bed", "S1: Soft enough");
  }
}

package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import com.opencsv.CSVReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A unit whose clock is set to weekdays, from the price list to what is written of it. */
class WeekdaysTest extends CommandTest {
  private static final String UNITS =
      "unit_id,price,resin_ft3,dosages_lb_per_ft3,controls,meter_extra_price\n"
          + "W,900,1.5,6,weekdays metered_at_night,200\nC,950,1.5,6,clock,0\n";

  @BeforeEach
  void writeUnits() throws IOException {
    Files.writeString(folder.resolve("units.csv"), UNITS);
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> candidates() throws IOException {
    assertThat(run("compare", folder.toString(), "--site", "A1", "--format", "json")).isZero();
    return (List<Map<String, Object>>) JSON.std.mapFrom(out.toString()).get("candidates");
  }

  private Map<String, Object> under(String control) throws IOException {
    return candidates().stream()
        .filter(candidate -> candidate.get("control").equals(control))
        .findFirst()
        .orElseThrow();
  }

  /** The bed is good for six days, so twice a week, four days apart at most. */
  @Test
  void jsonSaysWhichAndHowFarApart() throws IOException {
    assertThat(under("weekdays"))
        .containsEntry("weekdays", List.of("mon", "thu"))
        .containsEntry("longestGapDays", 4)
        .containsEntry("daysBetweenRegenerations", 4)
        .containsEntry("expectedDaysBetweenRegenerations", 3.5)
        .containsEntry("setVolumeGal", null);
    out.getBuffer().setLength(0);
    assertThat(under("clock"))
        .containsEntry("weekdays", null)
        .containsEntry("longestGapDays", null)
        .containsEntry("daysBetweenRegenerations", 6);
  }

  @Test
  @SuppressWarnings("unchecked")
  void aMeterIsPaidForAndAClockOnWeekdaysIsNot() throws IOException {
    Map<String, Object> price = (Map<String, Object>) under("weekdays").get("price");
    out.getBuffer().setLength(0);
    Map<String, Object> metered = (Map<String, Object>) under("metered_at_night").get("price");

    assertThat(((Number) price.get("equipment")).doubleValue()).isEqualTo(900);
    assertThat(((Number) metered.get("equipment")).doubleValue()).isEqualTo(1_100);
  }

  @Test
  void csvHasThemInOneCell() throws Exception {
    assertThat(run("compare", folder.toString(), "--site", "A1", "--format", "csv")).isZero();

    try (CSVReader csv = new CSVReader(new StringReader(out.toString()))) {
      List<String[]> rows = csv.readAll();
      List<String> names = Arrays.asList(rows.get(0));
      assertThat(rows.stream().skip(1))
          .extracting(
              row -> row[names.indexOf("control")],
              row -> row[names.indexOf("weekdays")],
              row -> row[names.indexOf("longestGapDays")])
          .contains(
              org.assertj.core.groups.Tuple.tuple("weekdays", "mon thu", "4"),
              org.assertj.core.groups.Tuple.tuple("clock", "", ""));
    }
  }

  @Test
  void theTableAndTheGridOnTheScreenNameThem() throws IOException {
    Files.writeString(
        folder.resolve("units.csv"), UNITS.replace("weekdays metered_at_night", "weekdays"));
    assertThat(run("compare", folder.toString(), "--site", "A1")).isZero();
    assertThat(out.toString())
        .containsPattern("control .*clock, weekdays")
        .containsPattern("weekdays .*mon thu");
    out.getBuffer().setLength(0);
    assertThat(run("compare", folder.toString(), "--site", "A1", "--grid")).isZero();
    assertThat(out.toString()).contains("control: clock, weekdays");
    out.getBuffer().setLength(0);
    Files.writeString(folder.resolve("units.csv"), UNITS.replace("weekdays ", ""));
    assertThat(run("compare", folder.toString(), "--site", "A1")).isZero();
    assertThat(out.toString()).doesNotContain("weekdays");
  }

  @Test
  void theFlagsTakeThemToo() throws IOException {
    String[] flags =
        "compare --hardness 18gpg --people 3 --rated-grains 32000 --control weekdays --format json"
            .split(" ");
    assertThat(run(flags)).isZero();
    assertThat(out.toString()).contains("\"weekdays\"", "\"mon\"");
  }

  @Test
  void aSettingsSheetIsWrittenForThem() {
    String sheet = folder.resolve("sheet.pdf").toString();
    assertThat(
            run(
                "settings",
                folder.toString(),
                "--site",
                "A1",
                "--unit",
                "W",
                "--control",
                "weekdays",
                "--out",
                sheet))
        .isZero();
    assertThat(folder.resolve("sheet.pdf")).isNotEmptyFile();
  }
}

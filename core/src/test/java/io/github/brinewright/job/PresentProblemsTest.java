package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong entries of the softener in the house are named with place, value, limit and what to do. */
class PresentProblemsTest {
  /** Cells written as {@code column=cell}, separated by bars; the prefix is left out. */
  private static JobReading reading(String cells) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("site_id", "A");
    row.put("people", "3");
    row.put("hardness_gpg", "24");
    for (String cell : cells.split("\\|")) {
      String[] parts = cell.strip().split("=", 2);
      row.put("present_" + parts[0], parts[1]);
    }
    return JobFolder.read(JobFiles.of(Map.of(SiteCells.FILE, SiteCells.csv(row))));
  }

  private static List<String> said(String cells, Locale locale) {
    ProblemWords words = new ProblemWords(locale);
    return reading(cells).problems().stream().map(words::say).toList();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // days, weekdays
    "control=clock|days=0|rated_grains=40000,days,OUT_OF_RANGE,0",
    "control=clock|days=100|rated_grains=40000,days,OUT_OF_RANGE,100",
    "control=clock|days=3.5|rated_grains=40000,days,NOT_WHOLE,3.5",
    "control=clock|rated_grains=40000,days,NUMBER_NEEDED,''",
    "control=weekdays|rated_grains=40000,weekdays,WEEKDAYS_NEEDED,''",
    "control=weekdays|weekdays=mon thx|rated_grains=40000,weekdays,NOT_A_WEEKDAY,thx",
    // what does not go with the control
    "control=clock|days=7|weekdays=mon thu|rated_grains=40000,weekdays,SETTING_UNFIT,mon thu",
    "control=clock|days=7|volume_gal=900|rated_grains=40000,volume_gal,SETTING_UNFIT,900",
    "control=clock|days=7|rated_grains=1e,rated_grains,NOT_A_NUMBER,1e",
    "control=weekdays|weekdays=mon|days=7|rated_grains=40000,days,SETTING_UNFIT,7",
    "control=metered|volume_gal=900|weekdays=mon|rated_grains=40000,weekdays,SETTING_UNFIT,mon",
    "control=timer|days=7|rated_grains=40000,control,NOT_A_CHOICE,timer",
    "days=7|rated_grains=40000,control,PRESENT_CONTROL_NEEDED,''",
    "salt_bought_lb_per_year=600|rated_grains=40000,control,PRESENT_CONTROL_NEEDED,''",
    // meters
    "control=metered|rated_grains=40000,volume_gal,METER_SETTING_NEEDED,''",
    "control=metered|reserve_gal=50|rated_grains=40000,volume_gal,METER_SETTING_NEEDED,''",
    "control=metered|set_capacity_grains=30000|resin_ft3=1,set_hardness_gpg,NUMBER_NEEDED,''",
    "control=metered|volume_gal=900|set_hardness_gpg=24|resin_ft3=1,set_hardness_gpg,"
        + "METER_SET_TWICE,24",
    "control=metered|volume_gal=900|set_capacity_grains=30000|resin_ft3=1,set_capacity_grains,"
        + "METER_SET_TWICE,30000",
    "control=metered|volume_gal=900|reserve_gal=900|resin_ft3=1,reserve_gal,RESERVE_TOO_LARGE,900",
    "control=metered|set_hardness_gpg=24|set_capacity_grains=30000|reserve_gal=1251|resin_ft3=1,"
        + "reserve_gal,RESERVE_TOO_LARGE,1251",
    "control=metered|volume_gal=9|resin_ft3=1,volume_gal,OUT_OF_RANGE,9",
    // bed
    "control=clock|days=7,rated_grains,PRESENT_BED_NEEDED,''",
    "control=clock|days=7|vessel_diameter_in=9,vessel_height_in,NUMBER_NEEDED,''",
    "control=clock|days=7|vessel_height_in=48,vessel_diameter_in,NUMBER_NEEDED,''",
    "control=clock|days=7|resin_ft3=1|resin_id=fine-mush,resin_id,ID_UNKNOWN,fine-mush",
    // salt
    "control=clock|days=7|resin_ft3=1|salt_lb=9|refill_min=10,refill_min,PRESENT_SALT_TWICE,10",
    "control=clock|days=7|resin_ft3=1|dosage_lb_per_ft3=8|salt_lb=9,salt_lb,PRESENT_SALT_TWICE,9",
    "control=clock|days=7|resin_ft3=1|dosage_lb_per_ft3=8|refill_gpm=0.5,refill_gpm,"
        + "PRESENT_SALT_TWICE,0.5",
    "control=clock|days=7|resin_ft3=1|refill_gpm=0.5,refill_min,NUMBER_NEEDED,''",
    // readings
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1,readings,READING_ALONE,2026-01-03:1",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:9 2026-04-02:8,readings,READING_FALLS,"
        + "2026-04-02:8",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 2026-01-03:2,readings,"
        + "READINGS_UNORDERED,2026-01-03:2",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 2025-04-02:2,readings,"
        + "READINGS_UNORDERED,2025-04-02:2",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 12345,readings,NOT_A_READING,12345",
    "control=clock|days=7|resin_ft3=1|readings=3.1.2026:1 2026-04-02:2,readings,NOT_A_READING,"
        + "3.1.2026:1",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 2026-02-30:2,readings,NOT_A_DATE,"
        + "2026-02-30",
    "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 2026-04-02:many,readings,"
        + "NOT_A_NUMBER,many",
    "'control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 2026-04-02:1,234',readings,COMMA,"
        + "'1,234'",
    "control=clock|days=7|resin_ft3=1|read_meter=house,readings,READINGS_NEEDED,''",
    "control=clock|days=7|resin_ft3=1|regeneration_hour=24,regeneration_hour,OUT_OF_RANGE,24"
  })
  void aWrongEntryIsNamedWithItsColumnAndValue(
      String cells, String column, ProblemCode code, String value) {
    List<Problem> problems = reading(cells).problems();

    assertThat(problems)
        .filteredOn(problem -> problem.code() == code)
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.file()).isEqualTo("sites.csv");
              assertThat(problem.row()).isEqualTo(2);
              assertThat(problem.column()).isEqualTo("present_" + column);
              assertThat(problem.value()).isEqualTo(value);
            });
    assertThat(problems).extracting(Problem::code).doesNotContain(ProblemCode.REFUSED);
    assertThat(reading(cells).job().orElseThrow().homes()).as("not half understood").isEmpty();
  }

  /** One mistake is one message, so that none leads astray. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "control=clock|days=0|rated_grains=40000",
        "control=weekdays|weekdays=mon thx|rated_grains=40000",
        "control=metered|volume_gal=9|rated_grains=40000",
        "control=timer|days=7|weekdays=mon|rated_grains=40000",
        "control=clock|days=7|rated_grains=5",
        "control=clock|days=7|resin_ft3=1|refill_min=0|refill_gpm=0.5",
        "control=clock|days=7|resin_ft3=1|readings=2026-01-03:1 x|read_meter=house",
        "control=clock|days=7|resin_ft3=1|vessel_diameter_in=9"
      })
  void oneMistakeIsOneMessage(String cells) {
    assertThat(reading(cells).problems()).hasSize(1);
  }

  @Test
  void allThatIsWrongComesOutAtOnce() {
    assertThat(reading("control=clock|days=0|salt_lb=9|refill_min=10|read_meter=house").problems())
        .extracting(Problem::column)
        .containsExactlyInAnyOrder(
            "present_days", "present_refill_min", "present_rated_grains", "present_readings");
  }

  @Test
  void theMessagesSayWhatToDo() {
    assertThat(said("control=clock|days=100|weekdays=mom|rated_grains=40000", Locale.US))
        .containsExactlyInAnyOrder(
            "sites.csv, row 2, column present_days: \"100\" must be from 1 to 99",
            "sites.csv, row 2, column present_weekdays: \"mom\" is not a weekday;"
                + " did you mean \"mon\"?",
            "sites.csv, row 2, column present_weekdays: \"mom\" does not go with clock in"
                + " present_control; leave it empty, or change present_control");
    assertThat(said("control=metered|volume_gal=900|reserve_gal=950|resin_id=old", Locale.US))
        .containsExactlyInAnyOrder(
            "sites.csv, row 2, column present_reserve_gal: \"950\" is not below the 900 gal that"
                + " the meter lets pass; read both again",
            "sites.csv, row 2, column present_rated_grains: is needed, or present_resin_ft3, or"
                + " present_vessel_diameter_in with the height; without one of them nothing is"
                + " known of the bed",
            "sites.csv, row 2, column present_resin_id: \"old\" is not known; known are:"
                + " standard-gel, standard-mesh, fine-mesh, general-purpose");
  }

  @ParameterizedTest
  @CsvSource({
    "es-US,columna present_weekdays,no es un día de la semana; ¿quería decir \"mon\"?",
    "fr-CA,colonne present_weekdays,n’est pas un jour de la semaine ; vouliez-vous dire \"mon\" ?"
  })
  void theNearestWeekdayIsNamedInTheReadersLanguage(String tag, String column, String words) {
    assertThat(said("control=weekdays|weekdays=mom|rated_grains=40000", Locale.forLanguageTag(tag)))
        .singleElement()
        .asString()
        .contains(column, "\"mom\" " + words);
  }

  private static final Set<ProblemCode> OURS =
      Set.of(
          ProblemCode.NOT_A_WEEKDAY,
          ProblemCode.NOT_A_READING,
          ProblemCode.READING_ALONE,
          ProblemCode.READINGS_UNORDERED,
          ProblemCode.READING_FALLS,
          ProblemCode.READINGS_NEEDED,
          ProblemCode.PRESENT_CONTROL_NEEDED,
          ProblemCode.SETTING_UNFIT,
          ProblemCode.WEEKDAYS_NEEDED,
          ProblemCode.METER_SETTING_NEEDED,
          ProblemCode.METER_SET_TWICE,
          ProblemCode.RESERVE_TOO_LARGE,
          ProblemCode.PRESENT_BED_NEEDED,
          ProblemCode.PRESENT_SALT_TWICE);

  /** Each advises after a semicolon, and no place for a figure stays open. */
  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void eachMessageAdvisesInEachLanguage(String tag) {
    List<String> rows =
        List.of(
            "control=weekdays|weekdays=thx|rated_grains=40000",
            "control=weekdays|rated_grains=40000",
            "control=clock|days=7|volume_gal=900|read_meter=house",
            "days=7|resin_ft3=1|salt_lb=9|refill_min=10",
            "control=metered|resin_ft3=1",
            "control=metered|volume_gal=900|set_hardness_gpg=24|reserve_gal=900|resin_ft3=1",
            "control=clock|days=7|resin_ft3=1|readings=2026-01-03:9",
            "control=clock|days=7|resin_ft3=1|readings=2026-01-03:9 2026-04-02:8",
            "control=clock|days=7|resin_ft3=1|readings=2026-01-03:9 2026-01-02:9",
            "control=clock|days=7|resin_ft3=1|readings=x 2026-01-02:9");
    Set<ProblemCode> seen =
        rows.stream()
            .flatMap(row -> reading(row).problems().stream())
            .map(Problem::code)
            .collect(Collectors.toSet());

    assertThat(seen).containsAll(OURS);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat(said(row, Locale.forLanguageTag(tag)))
                    .allSatisfy(text -> assertThat(text).contains(";").doesNotContain("{")));
  }
}

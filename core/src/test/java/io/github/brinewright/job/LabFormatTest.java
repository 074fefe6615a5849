package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What laboratories write in place of a number, for every substance. */
class LabFormatTest {
  private static JobReading reading(String column, String cell) {
    return JobFolder.read(
        JobFiles.of(
            Map.of(
                "sites.csv",
                "site_id,people,hardness_gpg," + column + "\nA,3,18,\"" + cell + "\"\n")));
  }

  private static WaterAnalysis water(String cell) {
    JobReading reading = reading("iron_mg_per_l", cell);
    assertThat(reading.problems()).isEmpty();
    return reading.job().orElseThrow().homes().get(0).site().water();
  }

  private static Optional<LabResult> iron(String cell) {
    return water(cell).result(Substance.IRON);
  }

  private static LabResult below(double milligrams) {
    return LabResult.below(Concentration.ofMilligramsPerLitre(milligrams));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ND", "nd", "n.d.", "N/D", "Not detected", "none detected"})
  void whatWasNotDetectedIsAResult(String cell) {
    assertThat(iron(cell)).contains(LabResult.NOT_DETECTED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"no detectado", "No detectada", "non détecté", "NON DÉTECTÉE"})
  void soItIsInTheWordsOfAFormInAnotherLanguage(String cell) {
    assertThat(iron(cell)).contains(LabResult.NOT_DETECTED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"<0.05", "< 0.05", "<  0.0500"})
  void belowAReportingLimitIsAResultThatCountsTheLimit(String cell) {
    assertThat(iron(cell)).contains(below(0.05));
    assertThat(water(cell).found(Substance.IRON))
        .contains(Concentration.ofMilligramsPerLitre(0.05));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "not tested", "Not tested"})
  void notTestedIsNone(String cell) {
    assertThat(iron(cell)).isEmpty();
  }

  @Test
  void zeroIsAnAmount() {
    assertThat(iron("0")).contains(LabResult.measured(Concentration.ofMilligramsPerLitre(0)));
  }

  @ParameterizedTest
  @EnumSource(Substance.class)
  void everySubstanceTakesThemAndWritesThemBack(Substance substance) {
    String column = column(substance);
    for (String cell : List.of("<0.05", "ND", "2.5")) {
      Job job = reading(column, cell).job().orElseThrow();
      assertThat(job.homes()).as(column).hasSize(1);
      assertThat(job.homes().get(0).site().water().result(substance)).isPresent();
      assertThat(SiteCells.of(job.homes().get(0))).containsEntry(column, cell);
    }
  }

  private static String column(Substance substance) {
    return substance == Substance.TOTAL_DISSOLVED_SOLIDS
        ? "tds_mg_per_l"
        : SiteCells.word(substance) + "_mg_per_l";
  }

  @ParameterizedTest
  @CsvSource({
    "trace,NOT_A_LAB_RESULT",
    "<,NOT_A_LAB_RESULT",
    ">5,NOT_A_LAB_RESULT",
    "<ND,NOT_A_LAB_RESULT",
    "<0,REPORTING_LIMIT_ZERO",
    "<60000,OUT_OF_RANGE",
    "60000,OUT_OF_RANGE",
    "'<0,05',COMMA",
    "'0,05',COMMA"
  })
  void anythingElseIsRefusedInWords(String cell, ProblemCode code) {
    assertThat(reading("iron_mg_per_l", cell).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(code);
              assertThat(problem.column()).isEqualTo("iron_mg_per_l");
            });
  }
}

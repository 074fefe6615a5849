package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of which one cell decides how another is read. */
class VisitRowTest {
  private static JobReading reading(Map<String, String> more) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("sites.csv", "site_id,people,hardness_gpg\nA,3,18\n");
    texts.putAll(more);
    return JobFolder.read(JobFiles.of(texts));
  }

  private static JobReading home(String columns, String cells) {
    return reading(
        Map.of(
            "sites.csv",
            "site_id,people,hardness_gpg," + columns + "\nA,3,18," + cells + "\n",
            "dealer.properties",
            "place=ca-on\n"));
  }

  private static Site site(String columns, String cells) {
    JobReading reading = home(columns, cells);
    assertThat(reading.problems()).isEmpty();
    return reading.job().orElseThrow().homes().get(0).site();
  }

  @Test
  void aHomeIsWhereTheDealerIsUnlessItNamesAPlace() {
    assertThat(site("place", "").place()).isEqualTo(Place.of("CA-ON"));
    assertThat(site("place", "us-ca").place()).isEqualTo(Place.of("US-CA"));
    assertThat(home("place", "Ontario").problems())
        .singleElement()
        .extracting(Problem::code)
        .isEqualTo(ProblemCode.NOT_A_PLACE);
  }

  @Test
  void treatedWaterNeedsItsHardness() {
    assertThat(home("treated_iron_mg_per_l", "<0.1").problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.column()).isEqualTo("treated_hardness_gpg");
              assertThat(problem.code()).isEqualTo(ProblemCode.NUMBER_NEEDED);
            });
    Site home = site("treated_hardness_gpg,treated_iron_mg_per_l", "25,<0.1");
    assertThat(home.softenedWater().hardness()).isEqualTo(Hardness.ofGrainsPerGallon(25));
  }

  @Test
  void theTargetLiesBelowTheWaterThatIsSoftened() {
    assertThat(home("target_hardness_gpg,treated_hardness_gpg", "8,6").problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.TARGET_TOO_HIGH);
              assertThat(problem.toString()).contains("6 gpg");
            });
    assertThat(home("target_hardness_gpg,treated_hardness_gpg", "8,9").problems()).isEmpty();
  }

  private static JobReading unit(String cells) {
    return reading(
        Map.of(
            "units.csv",
            "unit_id,price,resin_ft3,dosages_lb_per_ft3,arrangement,tanks,controls\nU,1,1,6,"
                + cells
                + "\n"));
  }

  private static Softener softener(String cells) {
    List<Offer> offers = unit(cells).job().orElseThrow().prices().offers();
    return offers.get(0).softener();
  }

  @Test
  void tanksAndControlFollowTheArrangement() {
    assertThat(softener(",,").tanks()).isEqualTo(1);
    assertThat(softener("parallel,,").tanks()).isEqualTo(2);
    assertThat(softener("parallel,3,clock").tanks()).isEqualTo(3);
    assertThat(softener("single,1,weekdays clock").controls())
        .containsExactly(Control.CLOCK, Control.WEEKDAYS);
    Softener twin = softener("twin_alternating,,");
    assertThat(twin.arrangement()).isEqualTo(Arrangement.TWIN_ALTERNATING);
    assertThat(twin.tanks()).isEqualTo(2);
    assertThat(twin.controls()).isEqualTo(Set.of(Control.METERED_AT_ONCE));
  }

  @ParameterizedTest
  @CsvSource({
    "'single,2,',tanks,TANKS_UNFIT",
    "'twin_alternating,3,',tanks,TANKS_UNFIT",
    "'parallel,1,',tanks,TANKS_UNFIT",
    "'twin_alternating,2,metered_at_night',controls,TWIN_CONTROL",
    "'twin_alternating,2,metered_at_once clock',controls,TWIN_CONTROL",
    "'twin_alternating,2,weekdays',controls,TWIN_CONTROL"
  })
  void whatDoesNotFitTheArrangementIsRefusedInWords(String cells, String column, ProblemCode code) {
    assertThat(unit(cells).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.column()).isEqualTo(column);
              assertThat(problem.code()).isEqualTo(code);
            });
  }

  @Test
  void theDealerMayChooseAPercentileForAllHomes() {
    JobReading reading = reading(Map.of("dealer.properties", "design_use_percent=90\n"));

    assertThat(reading.job().orElseThrow().prices().limits().designUse()).hasValue(0.9);
    assertThat(reading(Map.of()).job().orElseThrow().prices().limits().designUse()).isEmpty();
  }
}

package io.github.brinewright.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The choice for each home of the panel is one that an engineer would sign. */
class PanelChoiceTest {
  private static Job job;

  @BeforeAll
  static void read() throws Exception {
    job = Panel.job();
  }

  private static boolean none(Map<String, String> home) {
    return home.get("resin_ft3").equals("none");
  }

  static Stream<Map<String, String>> withAChoice() throws Exception {
    return Panel.expected().stream().filter(home -> !none(home));
  }

  static Stream<Map<String, String>> withoutAChoice() throws Exception {
    return Panel.expected().stream().filter(PanelChoiceTest::none);
  }

  private static Comparison compare(Map<String, String> home) {
    return job.compare(job.home(home.get("site_id")).orElseThrow());
  }

  @Test
  void atLeastTwentyFourHomesEachWithItsArgument() throws Exception {
    assertThat(Panel.expected())
        .hasSizeGreaterThanOrEqualTo(24)
        .noneMatch(home -> home.get("why").isBlank());
  }

  @ParameterizedTest
  @MethodSource("withAChoice")
  void theRecommendedIsAmongTheAcceptable(Map<String, String> home) {
    Candidate chosen = compare(home).recommended().orElseThrow();
    String who = home.get("site_id") + ", " + home.get("why") + ": " + chosen;

    assertThat(Stream.of(home.get("resin_ft3").split(" ")).map(Double::valueOf))
        .as(who)
        .anySatisfy(
            volume -> assertThat(chosen.resin().cubicFeet()).isCloseTo(volume, within(1e-6)));
    assertThat(chosen.dosage().poundsPerCubicFoot())
        .as(who)
        .isBetween(
            Double.parseDouble(home.get("lowest_dosage_lb_per_ft3")) - 1e-6,
            Double.parseDouble(home.get("highest_dosage_lb_per_ft3")) + 1e-6);
    assertThat(home.get("controls").split(" "))
        .as(who)
        .contains(chosen.setup().control().name().toLowerCase(Locale.ROOT));
  }

  @ParameterizedTest
  @MethodSource("withoutAChoice")
  void nothingIsRecommendedWhereNothingMayBe(Map<String, String> home) {
    Comparison comparison = compare(home);

    assertThat(comparison.recommended()).as(home.get("why")).isEmpty();
    assertThat(comparison.cheapestThatFits()).isEmpty();
    assertThat(comparison.whyRecommended()).isEmpty();
  }
}

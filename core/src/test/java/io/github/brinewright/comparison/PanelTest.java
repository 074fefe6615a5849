package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.comparison.Panel.Expected;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.job.Job;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The verdict and the choice for each home of the panel are ones that an engineer would sign. */
class PanelTest {
  private static final Job JOB = Panel.job();

  static List<Expected> homes() {
    return Panel.expected();
  }

  static Stream<Expected> withAChoice() {
    return homes().stream().filter(home -> !home.none());
  }

  static Stream<Expected> withoutAChoice() {
    return homes().stream().filter(Expected::none);
  }

  private static Comparison compare(Expected home) {
    return JOB.compare(JOB.home(home.siteId()).orElseThrow());
  }

  @Test
  void atLeastTwentyFourHomesEachWithItsArgument() {
    assertThat(homes()).hasSizeGreaterThanOrEqualTo(24).noneMatch(home -> home.why().isBlank());
    assertThat(JOB.homes()).hasSameSizeAs(homes());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theVerdictListsAllReasons(Expected home) {
    Comparison comparison = compare(home);

    assertThat(comparison.verdict().kind().name().toLowerCase(Locale.ROOT))
        .isEqualTo(home.verdict());
    assertThat(comparison.verdict().reasons())
        .extracting(Finding::code)
        .containsExactlyInAnyOrderElementsOf(home.reasons());
  }

  @ParameterizedTest
  @MethodSource("withAChoice")
  void theRecommendedIsAmongTheAcceptable(Expected home) {
    Candidate chosen = compare(home).recommended().orElseThrow();

    assertThat(home.resins())
        .as("%s: %s", home, chosen)
        .anySatisfy(
            volume -> assertThat(chosen.resin().cubicFeet()).isCloseTo(volume, within(1e-6)));
    assertThat(chosen.dosage().poundsPerCubicFoot())
        .as("%s: %s", home, chosen)
        .isBetween(home.lowest() - 1e-6, home.highest() + 1e-6);
    assertThat(chosen.setup().control().name().toLowerCase(Locale.ROOT))
        .as("%s: %s", home, chosen)
        .isIn(home.controls());
  }

  @ParameterizedTest
  @MethodSource("withoutAChoice")
  void nothingIsRecommendedWhereNothingMayBe(Expected home) {
    Comparison comparison = compare(home);

    assertThat(comparison.recommended()).as("%s", home).isEmpty();
    assertThat(comparison.cheapestThatFits()).isEmpty();
    assertThat(comparison.whyRecommended()).isEmpty();
  }
}

package io.github.brinewright.panel;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.job.Job;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The verdict on every home of the panel, with all its reasons, read as a job is. */
class PanelVerdictTest {
  private static Job job;

  @BeforeAll
  static void read() throws Exception {
    job = Panel.job();
  }

  static Stream<Map<String, String>> homes() throws Exception {
    return Panel.expected().stream();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theVerdictIsThatOfAnExperiencedEngineer(Map<String, String> expected) {
    String id = expected.get("site_id");
    Verdict verdict = Verdict.of(new HomeLoad(job.home(id).orElseThrow().site()));

    assertThat(verdict.kind().name().toLowerCase(Locale.ROOT) + ": " + codes(verdict))
        .as("%s, %s", id, expected.get("why"))
        .isEqualTo(expected.get("verdict") + ": " + expected.get("reasons"));
    assertThat(verdict.permitsRecommendation())
        .as("%s has a choice", id)
        .isEqualTo(!expected.get("resin_ft3").equals("none"));
  }

  private static String codes(Verdict verdict) {
    return verdict.reasons().stream().map(Finding::code).collect(Collectors.joining(" "));
  }
}

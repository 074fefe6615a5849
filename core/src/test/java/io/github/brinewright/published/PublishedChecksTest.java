package io.github.brinewright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import io.github.brinewright.GeneratedPage;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published figure of published-checks.csv against what the library computes. */
class PublishedChecksTest {
  private static final Map<String, DoubleSupplier> COMPUTED = Computed.all();

  static Stream<PublishedCheck> checks() throws Exception {
    List<PublishedCheck> checks = new ArrayList<>();
    try (Reader in =
            new InputStreamReader(
                Objects.requireNonNull(
                    PublishedChecksTest.class.getResourceAsStream("/published-checks.csv")),
                StandardCharsets.UTF_8);
        CSVReader csv =
            new CSVReaderBuilder(in)
                .withSkipLines(1)
                .withCSVParser(new RFC4180ParserBuilder().build())
                .build()) {
      for (String[] f : csv) {
        checks.add(
            new PublishedCheck(f[0], f[1], Double.parseDouble(f[2]), f[3], f[4], f[5], f[6]));
      }
    }
    return checks.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("checks")
  void theLibraryAgreesWithThePublication(PublishedCheck check) {
    DoubleSupplier computed = COMPUTED.get(check.id());

    assertThat(computed).as("a computation for " + check.id()).isNotNull();
    assertThat(computed.getAsDouble())
        .as(check + ", " + check.source())
        .isCloseTo(check.expected(), within(check.absoluteTolerance()));
  }

  @Test
  void everyComputationHasAPublishedFigure() throws Exception {
    assertThat(COMPUTED.keySet())
        .containsExactlyInAnyOrderElementsOf(checks().map(PublishedCheck::id).toList());
  }

  @Test
  void everyFigureNamesItsSourceAndTheReasonOfItsTolerance() throws Exception {
    assertThat(checks())
        .allSatisfy(
            check -> {
              assertThat(check.source()).isNotBlank();
              assertThat(check.reason()).isNotBlank();
              assertThat(check.howKnown()).isNotBlank();
            });
  }

  @Test
  void aPageOfAllChecksIsKept() throws Exception {
    StringBuilder page = new StringBuilder("# Published figures and what we compute\n\n");
    page.append("Written by the test run. Deviation is computed less published.\n\n");
    page.append("| id | figure | published | computed | deviation | tolerance | source |\n");
    page.append("|---|---|---|---|---|---|---|\n");
    checks().forEach(check -> page.append(row(check)));
    GeneratedPage.keep("PUBLISHED-CHECKS.md", page.toString());
  }

  private static String row(PublishedCheck check) {
    double computed = COMPUTED.get(check.id()).getAsDouble();
    double deviation = computed - check.expected();
    boolean nothing = Math.abs(deviation) <= 1e-9 * Math.abs(check.expected());
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %.7g | %.2g | %s: %s | %s (%s) |\n",
        check.id(),
        check.quantity(),
        check.expected(),
        computed,
        nothing ? 0.0 : deviation,
        check.tolerance(),
        check.reason(),
        check.source(),
        check.howKnown());
  }
}

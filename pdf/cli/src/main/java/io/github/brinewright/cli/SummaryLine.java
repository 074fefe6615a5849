package io.github.brinewright.cli;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;
import java.util.stream.Collectors;

/** A home in a line: the verdict, what is recommended, and every caution of its document. */
final class SummaryLine {
  private SummaryLine() {}

  static String of(Comparison comparison) {
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    return comparison.home().site().id()
        + ": "
        + VerdictLines.brief(comparison.verdict(), words)
        + "; "
        + comparison.recommended().map(SummaryLine::setting).orElse("no recommendation")
        + cautions(comparison);
  }

  private static String setting(Candidate candidate) {
    return "recommended " + candidate.softener().name();
  }

  private static String cautions(Comparison comparison) {
    String codes =
        comparison.cautions().stream().map(Finding::code).collect(Collectors.joining(", "));
    return codes.isEmpty() ? "" : "; cautions: " + codes;
  }
}

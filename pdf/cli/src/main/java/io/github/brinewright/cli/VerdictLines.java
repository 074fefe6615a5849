package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.treatment.TreatmentStage;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The verdict on a home for a terminal: with each reason, and what would change it. */
final class VerdictLines {
  private VerdictLines() {}

  static List<String> of(Comparison comparison, Wording words) {
    Verdict verdict = comparison.verdict();
    List<String> lines = new ArrayList<>();
    lines.add("verdict: " + words.term(verdict.kind()) + consequence(comparison));
    for (Finding reason : verdict.reasons()) {
      lines.add("- " + words.finding(reason));
      if (!comparison.isAnswered(reason)) {
        lines.add("  what would change it: " + words.change(reason));
      }
    }
    return lines;
  }

  private static String consequence(Comparison comparison) {
    Verdict verdict = comparison.verdict();
    if (!verdict.permitsRecommendation()) {
      return verdict.kind() == VerdictKind.SOFT_ENOUGH
          ? "; options are shown when softer water is asked for"
          : "; no option is shown until the water after treatment is stated";
    }
    return (verdict.isConditional() ? "; sized for the water " + behind(comparison) : "")
        + (verdict.isProvisional() ? "; figures are provisional" : "");
  }

  private static String behind(Comparison comparison) {
    return comparison
        .treatment()
        .map(
            train ->
                train.stages().stream()
                    .map(TreatmentStage::id)
                    .collect(Collectors.joining(", then ", "behind ", ", as computed")))
        .orElse("after treatment as stated");
  }

  /** The verdict in a few words, with the codes of its reasons. */
  static String brief(Verdict verdict, Wording words) {
    String codes = verdict.reasons().stream().map(Finding::code).collect(Collectors.joining(", "));
    return words.term(verdict.kind()) + (codes.isEmpty() ? "" : " (" + codes + ")");
  }
}

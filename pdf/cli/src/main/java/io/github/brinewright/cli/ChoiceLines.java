package io.github.brinewright.cli;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** What is recommended and why, and the cheapest that fits, for a terminal. */
final class ChoiceLines {
  private final Comparison comparison;
  private final Wording words;
  private final List<String> lines = new ArrayList<>();

  private ChoiceLines(Comparison comparison, Wording words) {
    this.comparison = comparison;
    this.words = words;
  }

  static List<String> of(Comparison comparison, Wording words) {
    ChoiceLines choice = new ChoiceLines(comparison, words);
    comparison.recommended().ifPresentOrElse(choice::recommended, choice::nothing);
    return choice.lines;
  }

  private void recommended(Candidate candidate) {
    lines.add("recommended: " + setting(candidate));
    comparison.whyRecommended().map(words::reason).ifPresent(this::say);
    candidate.marginsBroken().forEach(check -> margin("broken", check));
    candidate.marginsNear().forEach(check -> margin("near", check));
    Candidate cheapest = comparison.cheapestThatFits().orElseThrow();
    lines.add("cheapest that fits: " + setting(cheapest));
    comparison
        .against(cheapest)
        .map(words::reason)
        .ifPresentOrElse(this::say, () -> say("It is the recommended one."));
  }

  private String setting(Candidate candidate) {
    return candidate.softener().name()
        + ", "
        + words.term(candidate.setup().control())
        + ", "
        + words.figure(Figure.of(candidate.salt(), 1))
        + " of salt each time";
  }

  private void say(String sentence) {
    lines.add("  " + sentence);
  }

  private void margin(String grade, MarginCheck check) {
    lines.add("- margin " + grade + ": " + words.margin(check));
  }

  private void nothing() {
    lines.add("No unit keeps every limit; the limits that each one breaks:");
    for (Candidate candidate : comparison.bestOfEachUnit()) {
      candidate
          .broken()
          .forEach(
              finding ->
                  lines.add("- " + candidate.softener().name() + ": " + words.finding(finding)));
    }
  }
}

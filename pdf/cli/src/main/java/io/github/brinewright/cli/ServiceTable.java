package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * The study of a present softener as plain text for a terminal: what was found, what is wrong, the
 * ways to go on side by side, what is assumed and what comes of it.
 */
final class ServiceTable {
  private final ServiceStudy study;
  private final Comparison comparison;
  private final Wording words;
  private final List<String> lines = new ArrayList<>();

  private ServiceTable(ServiceStudy study, Wording words) {
    this.study = study;
    comparison = study.comparison();
    this.words = words;
  }

  /** The study of one home as lines of text, none wider than 100 columns. */
  static String of(ServiceStudy study, Wording words) {
    ServiceTable table = new ServiceTable(study, words);
    table.home();
    table.found();
    table.faults();
    table.ways();
    table.assumptions();
    table.advice();
    return String.join("\n", table.lines) + "\n";
  }

  private void home() {
    var home = comparison.home();
    say(home.site().id() + ": " + home.site().contact().name());
    say(
        "compensated hardness "
            + figure(Figure.of(home.compensatedHardness()))
            + ", "
            + figure(Figure.roughly(home.use().expected()))
            + " a day on average, from "
            + words.term(home.use().expectedBasis()));
    if (home.use().expectedBasis() == UseBasis.READINGS) {
      var likely = home.use().likely().uncertain();
      say(
          "  nine of ten such homes use "
              + words.number(Figure.roughly(home.use().expected().times(likely.quantile(0.05))))
              + " to "
              + figure(Figure.roughly(home.use().expected().times(likely.quantile(0.95))))
              + " a day");
    }
    VerdictLines.of(comparison, words).forEach(this::say);
  }

  private void found() {
    head("the softener in the house:");
    lines.addAll(FoundLines.of(study.found(), words));
  }

  private void faults() {
    if (study.faults().isEmpty()) {
      head("nothing wrong was found with it.");
      return;
    }
    head("what is wrong:");
    study.faults().forEach(fault -> item(words.fault(fault)));
  }

  private void ways() {
    head(
        "in a year, on the same simulated days; in brackets nine of ten draws of what nobody knows:");
    lines.addAll(WayLines.of(study, words));
  }

  private void assumptions() {
    head("taken as so:");
    study.assumptions().forEach(each -> item(words.assumption(each)));
    item("All this is computed with these assumptions, and is no promise.");
  }

  private void advice() {
    cautions().forEach(this::caution);
    head("advice: " + words.advice(study.advice()));
  }

  /** On the home and, where one would take its place, on the new unit. */
  private List<Finding> cautions() {
    return study
        .option(Kind.REPLACED)
        .flatMap(ServiceOption::candidate)
        .map(comparison::cautions)
        .orElseGet(
            () ->
                comparison.homeFindings().stream()
                    .filter(finding -> finding.severity() == Severity.CAUTION)
                    .toList());
  }

  private void caution(Finding finding) {
    item(words.term(finding.severity()) + ": " + words.finding(finding));
  }

  private String figure(Figure figure) {
    return words.figure(figure);
  }

  private void head(String text) {
    lines.add("");
    say(text);
  }

  private void say(String text) {
    lines.addAll(Folded.lines(text, Folded.WIDTH));
  }

  private void item(String sentence) {
    lines.addAll(Folded.item("- ", sentence));
  }
}

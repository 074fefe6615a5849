package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.trace.Figure;
import java.util.Arrays;
import java.util.List;

/**
 * The first year's costs as stacked bars; the table of the cost section holds their numbers.
 *
 * @param comparison they belong to
 * @param candidates from top to bottom
 */
record CostParts(Comparison comparison, List<Candidate> candidates) {
  static final String TITLE = "year.stack";

  /** Keeps the candidates whose bed can serve the home: of others no year is known. */
  CostParts {
    candidates = candidates.stream().filter(candidate -> candidate.design().feasible()).toList();
  }

  Chart chart() {
    List<Phrase> inWords = candidates.stream().map(CostParts::inWords).toList();
    return new Chart.StackedBars(
        Phrase.text("year.stack.alt", Phrase.sentences(inWords)),
        Arrays.stream(CostKind.values()).map(Phrase::of).toList(),
        candidates.stream().map(this::bar).toList());
  }

  private static Phrase inWords(Candidate candidate) {
    List<Phrase> each =
        Arrays.stream(CostKind.values()).map(kind -> inWords(candidate, kind)).toList();
    return Phrase.text(
        "year.stack.bar",
        Phrase.plain(candidate.softener().name()),
        Phrase.of(Figure.about(candidate.yearly().total())),
        new Phrase.Joined(each, ", "));
  }

  private static Phrase inWords(Candidate candidate, CostKind kind) {
    return new Phrase.Joined(
        List.of(Phrase.of(kind), Phrase.of(Figure.about(candidate.yearly().of(kind)))), " ");
  }

  private Chart.Bar bar(Candidate candidate) {
    return new Chart.Bar(
        candidate.softener().id(),
        Phrase.plain(candidate.softener().name()),
        List.copyOf(candidate.yearly().lines().values()),
        Phrase.of(Figure.about(candidate.yearly().total())),
        comparison.recommends(candidate));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.trace.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * The first year's costs as stacked bars; the table of the cost section holds their numbers.
 *
 * @param subject they belong to
 */
record CostParts(Subject subject) {
  static final String TITLE = "year.stack";

  /** One bar, before it is drawn. */
  private record Part(
      String key, Phrase name, Phrase said, Map<CostKind, Money> lines, boolean chosen) {
    private static Part of(PresentColumn now) {
      return new Part(
          PresentColumn.KEY,
          PresentColumn.name(),
          PresentColumn.said(),
          now.asFound().costLines(),
          false);
    }

    private Phrase total() {
      return Phrase.of(Figure.about(Money.total(lines.values())));
    }

    private Phrase inWords() {
      List<Phrase> each =
          lines.entrySet().stream()
              .<Phrase>map(line -> inWords(line.getKey(), line.getValue()))
              .toList();
      return Phrase.text("year.stack.bar", said, total(), new Phrase.Joined(each, ", "));
    }

    private static Phrase inWords(CostKind kind, Money money) {
      return new Phrase.Joined(List.of(Phrase.of(kind), Phrase.of(Figure.about(money))), " ");
    }

    private Chart.Bar bar() {
      return new Chart.Bar(key, name, List.copyOf(lines.values()), total(), chosen);
    }
  }

  Chart chart() {
    List<Part> parts = parts();
    List<Phrase> inWords = parts.stream().map(Part::inWords).toList();
    return new Chart.StackedBars(
        Phrase.text("year.stack.alt", Phrase.sentences(inWords)),
        Arrays.stream(CostKind.values()).map(Phrase::of).toList(),
        parts.stream().map(Part::bar).toList());
  }

  /** Without the candidates whose bed cannot serve the home: of them no year is known. */
  private List<Part> parts() {
    return Stream.concat(
            subject.present().map(Part::of).stream(),
            subject.columns().stream()
                .filter(candidate -> candidate.design().feasible())
                .map(this::part))
        .toList();
  }

  private Part part(Candidate candidate) {
    Phrase name = Phrase.plain(candidate.softener().name());
    return new Part(
        candidate.softener().id(),
        name,
        name,
        candidate.yearly().lines(),
        subject.comparison().recommends(candidate));
  }
}

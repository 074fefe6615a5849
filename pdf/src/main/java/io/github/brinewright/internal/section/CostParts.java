package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.internal.chart.StackedBars;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.trace.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The first year's costs as stacked bars; the table of the cost section holds their numbers. */
final class CostParts {
  private final Kit kit;
  private final Tag tag;
  private final List<Candidate> candidates;

  CostParts(Kit kit, Tag section, List<Candidate> candidates) {
    this.kit = kit;
    this.candidates = candidates;
    tag = section;
  }

  Block block() {
    List<StackedBars.Bar> bars = candidates.stream().map(this::bar).toList();
    List<String> parts = Arrays.stream(CostKind.values()).map(kit.words()::term).toList();
    String alternative = candidates.stream().map(this::inWords).collect(Collectors.joining(" "));
    Block title = kit.subheading(tag, kit.text("year.stack"));
    String inWords = kit.text("year.stack.alt", Figure.of(alternative));
    Block drawing = kit.drawing(tag, inWords, new StackedBars(bars, parts));
    return Block.stack(List.of(title, drawing.after(6)));
  }

  private String inWords(Candidate candidate) {
    String each =
        Arrays.stream(CostKind.values())
            .map(
                kind ->
                    kit.words().term(kind) + " " + kit.words().about(candidate.yearly().of(kind)))
            .collect(Collectors.joining(", "));
    return kit.text(
        "year.stack.bar",
        Figure.of(candidate.softener().name()),
        Figure.about(candidate.yearly().total()),
        Figure.of(each));
  }

  private StackedBars.Bar bar(Candidate candidate) {
    List<Double> values =
        candidate.yearly().lines().values().stream()
            .map(money -> money.getAmount().doubleValue())
            .toList();
    return new StackedBars.Bar(
        candidate.softener().name(),
        values,
        kit.words().about(candidate.yearly().total()),
        kit.comparison().recommends(candidate));
  }
}

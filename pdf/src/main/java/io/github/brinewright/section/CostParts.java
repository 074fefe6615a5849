package io.github.brinewright.section;

import io.github.brinewright.chart.StackedBars;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.document.Tag;
import io.github.brinewright.layout.Block;
import io.github.brinewright.trace.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The first year's costs as stacked bars; the table of the cost section holds their numbers. */
final class CostParts {
  private final Kit kit;
  private final Tag tag;
  private final List<Option> options;

  CostParts(Kit kit, Tag section, List<Option> options) {
    this.kit = kit;
    this.options = options;
    tag = section;
  }

  Block block() {
    List<StackedBars.Bar> bars = options.stream().map(this::bar).toList();
    List<String> parts = Arrays.stream(CostKind.values()).map(kit.words()::term).toList();
    String alternative = options.stream().map(this::inWords).collect(Collectors.joining(" "));
    Block title = kit.subheading(tag, kit.text("year.stack"));
    String inWords = kit.text("year.stack.alt", Figure.of(alternative));
    Block drawing = kit.drawing(tag, inWords, new StackedBars(bars, parts));
    return Block.stack(List.of(title, drawing.after(6)));
  }

  private String inWords(Option option) {
    String each =
        Arrays.stream(CostKind.values())
            .map(kind -> kit.words().term(kind) + " " + kit.words().about(option.yearly().of(kind)))
            .collect(Collectors.joining(", "));
    return kit.text(
        "year.stack.bar",
        Figure.of(option.unit().name()),
        Figure.about(option.yearly().total()),
        Figure.of(each));
  }

  private StackedBars.Bar bar(Option option) {
    List<Double> values =
        option.yearly().lines().values().stream()
            .map(money -> money.getAmount().doubleValue())
            .toList();
    return new StackedBars.Bar(
        option.unit().name(),
        values,
        kit.words().about(option.yearly().total()),
        kit.comparison().recommends(option));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Item;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.treatment.TreatmentStage;
import io.github.brinewright.treatment.TreatmentTrain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The water as it comes, and after each treatment ahead of the softener. */
final class WaterOnItsWay {
  private static final List<Substance> SHOWN =
      List.of(
          Substance.IRON,
          Substance.MANGANESE,
          Substance.HYDROGEN_SULFIDE,
          Substance.FREE_CHLORINE,
          Substance.CHLORAMINE,
          Substance.ALKALINITY);

  private final Comparison comparison;
  private final TreatmentTrain train;

  private WaterOnItsWay(Comparison comparison, TreatmentTrain train) {
    this.comparison = comparison;
    this.train = train;
  }

  /** What is said of the treatments that are sold with a softener; nothing where there are none. */
  static List<Element> of(Comparison comparison) {
    return comparison
        .treatment()
        .map(train -> new WaterOnItsWay(comparison, train).elements())
        .orElse(List.of());
  }

  /** Their names, in the order of the water. */
  static Optional<Phrase> names(Comparison comparison) {
    return comparison
        .treatment()
        .map(train -> new WaterOnItsWay(comparison, train))
        .map(way -> new Phrase.Listed(way.stages().map(way::name).toList()));
  }

  private Stream<TreatmentStage> stages() {
    return train.stages().stream();
  }

  private List<Element> elements() {
    return List.of(
        Heading.of(Phrase.text("way.heading")), table(), Paragraph.fine(Phrase.text("way.note")));
  }

  private Phrase name(TreatmentStage stage) {
    return comparison.priceList().items().stream()
        .filter(item -> item.id().equals(stage.id()))
        .findFirst()
        .map(Item::name)
        .<Phrase>map(Phrase.Local::new)
        .orElse(Phrase.plain(stage.id()));
  }

  private Table table() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(column("raw", Phrase.text("way.raw")));
    stages().forEach(stage -> columns.add(column(stage.id(), name(stage))));
    List<Table.Line> lines = new ArrayList<>();
    lines.add(line("way.hardness", water -> Optional.of(Phrase.of(Figure.of(water.hardness())))));
    lines.add(line("way.ph", WaterOnItsWay::ph));
    SHOWN.stream()
        .filter(this::changes)
        .map(each -> line(Phrase.of(each), each.name(), water -> found(water, each)))
        .forEach(lines::add);
    return new Table("way", Phrase.NONE, columns, lines);
  }

  private static Table.Column column(String key, Phrase head) {
    return new Table.Column(key, head, Table.Kind.VALUES);
  }

  private boolean changes(Substance substance) {
    return !train
        .after()
        .result(substance)
        .equals(comparison.home().site().water().result(substance));
  }

  private Table.Line line(String key, Function<WaterAnalysis, Optional<Phrase>> value) {
    return line(Phrase.text(key), key, value);
  }

  private Table.Line line(
      Phrase label, String key, Function<WaterAnalysis, Optional<Phrase>> value) {
    List<Phrase> cells =
        Stream.concat(
                Stream.of(comparison.home().site().water()), stages().map(TreatmentStage::after))
            .map(water -> value.apply(water).orElse(PresentColumn.NONE))
            .toList();
    return Table.Line.of(key, label, cells);
  }

  private static Optional<Phrase> ph(WaterAnalysis water) {
    return water.ph().isPresent()
        ? Optional.of(Phrase.of(Figure.of(water.ph().getAsDouble(), 1)))
        : Optional.empty();
  }

  private static Optional<Phrase> found(WaterAnalysis water, Substance substance) {
    return water
        .result(substance)
        .map(result -> TreatedAs.result(result, substance == Substance.ALKALINITY ? 0 : 2));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.internal.chart.RunningTotal;
import io.github.brinewright.internal.document.Canvas.Stroke;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/** What the candidates cost in a year and over the years. */
public final class Costs {

  private final Kit kit;
  private final Wording words;
  private final Comparison comparison;
  private final Tag tag;

  /** The section of a proposal. */
  public Costs(Kit kit) {
    this.kit = kit;
    words = kit.words();
    comparison = kit.comparison();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    boolean billed = comparison.home().use().expectedBasis() == UseBasis.BILL;
    String accuracy = kit.text(billed ? "cost.accuracyBill" : "cost.accuracyTypical");
    return Block.stack(
        List.of(
            kit.heading(tag, kit.text("cost.heading")),
            kit.body(tag, kit.text("cost.lead", Figure.of(accuracy))).after(8).keptWithNext(),
            table().whole().after(14),
            kit.subheading(tag, kit.text("cost.chart")).after(16),
            chart().after(6).keptWithNext(),
            kit.quiet(tag, assumed()).after(6)));
  }

  private Block table() {
    CandidateTable table = new CandidateTable(kit);
    for (CostKind kind : CostKind.values()) {
      table.row(words.term(kind), candidate -> words.about(candidate.yearly().of(kind)));
    }
    table.total(kit.text("cost.total"), candidate -> words.about(candidate.yearly().total()));
    return table.in(tag, kit.text("cost.kind"));
  }

  private Block chart() {
    List<Candidate> shown =
        Stream.concat(
                Stream.of(kit.explained()),
                Stream.concat(comparison.smaller().stream(), comparison.larger().stream()))
            .toList();
    List<RunningTotal.Series> series = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      Ink ink = i == 0 ? kit.accent() : Ink.TEXT;
      series.add(
          new RunningTotal.Series(
              shown.get(i).softener().name(), values(shown.get(i)), Stroke.values()[i], ink));
    }
    RunningTotal artist =
        new RunningTotal(series, value -> words.about(money(value)), kit.text("cost.chart.years"));
    return kit.drawing(tag, alternative(shown), artist);
  }

  private Money money(double value) {
    return Money.of(comparison.tariff().currency(), BigDecimal.valueOf(Math.round(value)));
  }

  private static List<Double> values(Candidate candidate) {
    return IntStream.rangeClosed(0, candidate.life().years())
        .mapToObj(year -> candidate.life().after(year).getAmount().doubleValue())
        .toList();
  }

  private String alternative(List<Candidate> shown) {
    String lines =
        shown.stream()
            .map(
                candidate ->
                    kit.text(
                        "cost.chart.series",
                        Figure.of(candidate.softener().name()),
                        Figure.of(words.about(candidate.life().after(0))),
                        Figure.of(words.about(candidate.life().total()))))
            .collect(Collectors.joining(" "));
    return kit.text("cost.chart.alt", Figure.of(kit.explained().life().years()), Figure.of(lines));
  }

  private String assumed() {
    Tariff tariff = comparison.tariff();
    Terms terms = kit.explained().quote().terms();
    return kit.text(
        "cost.assumed",
        Figure.of(terms.years()),
        new Figure.Share(tariff.escalation().salt(), 1),
        new Figure.Share(tariff.escalation().water(), 1),
        new Figure.Share(terms.discountRate(), 1),
        Figure.of(tariff.perPound(kit.explained().softener().regenerant())),
        Figure.of(tariff.name()));
  }
}

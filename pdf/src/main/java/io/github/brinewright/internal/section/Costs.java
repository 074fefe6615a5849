package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/** What the candidates cost in a year and over the years. */
public final class Costs {
  private final Subject subject;
  private final Comparison comparison;

  /** The section of a proposal. */
  public Costs(Subject subject) {
    this.subject = subject;
    comparison = subject.comparison();
  }

  /** The section. */
  public Section section() {
    return Section.of(
        "cost",
        Phrase.text("cost.heading"),
        Together.of(Paragraph.of(Phrase.text("cost.lead", accuracy())), table()),
        Together.of(Heading.of(Phrase.text("cost.chart")), chart(), Paragraph.quiet(assumed())),
        Together.of(
            Heading.of(Phrase.text(CostParts.TITLE)),
            new CostParts(comparison, subject.columns()).chart()));
  }

  private Phrase accuracy() {
    DailyUse use = comparison.home().use();
    return switch (use.expectedBasis()) {
      case READINGS ->
          Phrase.text(
              "cost.accuracyRead",
              Phrase.of(Figure.percent(use.likely().uncertain().coefficient())));
      case BILL -> Phrase.text("cost.accuracyBill");
      default -> Phrase.text("cost.accuracyTypical");
    };
  }

  private Table table() {
    List<Table.Line> lines = new ArrayList<>();
    for (CostKind kind : CostKind.values()) {
      lines.add(
          Table.Line.of(Row.key(kind), Phrase.of(kind), cells(each -> each.yearly().of(kind))));
    }
    lines.add(Table.Line.of("cost.total", cells(each -> each.yearly().total())).summing());
    return new CandidateColumns(comparison, subject.columns())
        .table("cost", Phrase.text("cost.kind"), lines);
  }

  private List<Phrase> cells(Function<Candidate, Money> money) {
    return subject.columns().stream()
        .map(
            candidate -> CandidateRow.served(candidate, () -> Figure.about(money.apply(candidate))))
        .toList();
  }

  private Chart chart() {
    List<Candidate> shown =
        Stream.of(
                Stream.of(subject.explained()),
                comparison.smaller().stream(),
                comparison.larger().stream())
            .flatMap(Function.identity())
            .filter(candidate -> candidate.design().feasible())
            .toList();
    Phrase alternative =
        Phrase.text(
            "cost.chart.alt",
            Phrase.of(Figure.of(subject.explained().life().years())),
            Phrase.sentences(shown.stream().map(Costs::inWords).toList()));
    return new Chart.RunningTotal(
        alternative, shown.stream().map(Costs::series).toList(), Phrase.text("cost.chart.years"));
  }

  private static Chart.Series series(Candidate candidate) {
    List<Money> totals =
        IntStream.rangeClosed(0, candidate.life().years())
            .mapToObj(year -> candidate.life().after(year))
            .toList();
    return new Chart.Series(
        candidate.softener().id(), Phrase.plain(candidate.softener().name()), totals);
  }

  private static Phrase inWords(Candidate candidate) {
    return Phrase.text(
        "cost.chart.series",
        Phrase.plain(candidate.softener().name()),
        Phrase.of(Figure.about(candidate.life().after(0))),
        Phrase.of(Figure.about(candidate.life().total())));
  }

  private Phrase assumed() {
    Tariff tariff = comparison.tariff();
    Terms terms = subject.explained().quote().terms();
    return Phrase.text(
        "cost.assumed",
        Phrase.of(Figure.of(terms.years())),
        Phrase.of(new Figure.Share(tariff.escalation().salt(), 1)),
        Phrase.of(new Figure.Share(tariff.escalation().water(), 1)),
        Phrase.of(new Figure.Share(terms.discountRate(), 1)),
        Phrase.of(Figure.of(tariff.perPound(subject.explained().softener().regenerant()))),
        Phrase.plain(tariff.name()));
  }
}

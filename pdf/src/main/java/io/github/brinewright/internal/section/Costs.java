package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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
        Together.of(
            Heading.of(Phrase.text("cost.chart")),
            new LifeLines(subject).chart(),
            Paragraph.quiet(assumed())),
        Together.of(Heading.of(Phrase.text(CostParts.TITLE)), new CostParts(subject).chart()));
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
          Table.Line.of(
              Row.key(kind),
              Phrase.of(kind),
              cells(now -> now.costLines().get(kind), each -> each.yearly().of(kind))));
    }
    lines.add(
        Table.Line.of("cost.total", cells(ServiceOption::cost, each -> each.yearly().total()))
            .summing());
    return new CandidateColumns(subject, subject.columns())
        .table("cost", Phrase.text("cost.kind"), lines);
  }

  private List<Phrase> cells(
      Function<ServiceOption, Money> present, Function<Candidate, Money> money) {
    Stream<Phrase> now =
        subject.present().stream()
            .map(column -> column.year(year -> Figure.about(present.apply(year))));
    Stream<Phrase> candidates =
        subject.columns().stream()
            .map(
                candidate ->
                    CandidateRow.served(candidate, () -> Figure.about(money.apply(candidate))));
    return Stream.concat(now, candidates).toList();
  }

  private Phrase assumed() {
    Phrase now = subject.present().isPresent() ? Phrase.text("now.assumed") : Phrase.NONE;
    return Phrase.sentences(List.of(terms(), now));
  }

  private Phrase terms() {
    Tariff tariff = comparison.tariff();
    Terms terms = subject.explained().quote().terms();
    return Phrase.text(
        "cost.assumed",
        Phrase.of(Figure.of(terms.years())),
        Phrase.of(new Figure.Share(tariff.escalation().salt(), 1)),
        Phrase.of(new Figure.Share(tariff.escalation().water(), 1)),
        Phrase.of(new Figure.Share(terms.discountRate(), 1)),
        Phrase.of(
            new Figure.PriceOfMass(tariff.perPound(subject.explained().softener().regenerant()))),
        Phrase.plain(tariff.name()));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The price of the recommended candidate, or how each package is paid. */
public final class Price {
  private final Subject subject;

  /** The section of a proposal. */
  public Price(Subject subject) {
    this.subject = subject;
  }

  /** The section; empty when nothing can be recommended. */
  public Optional<Section> section() {
    return subject.comparison().recommended().map(this::section);
  }

  private Element matter(Candidate candidate) {
    if (candidate.offer().isUnpriced()) {
      return Paragraph.of(Phrase.text("price.unpriced"));
    }
    return subject.offersChoices()
        ? new PaymentTable(subject, subject.packages().all()).table()
        : rows(candidate);
  }

  private Section section(Candidate candidate) {
    List<Element> elements = new ArrayList<>();
    Optional<WaysToPay> ways = WaysToPay.of(subject);
    if (ways.isEmpty() || !subject.offersChoices()) {
      elements.add(matter(candidate));
    }
    ways.map(WaysToPay::elements).ifPresent(elements::addAll);
    if (subject.offersChoices() && !subject.packages().extras().isEmpty() && ways.isEmpty()) {
      elements.add(Paragraph.quiet(Phrase.text("pay.extras")));
    }
    QuoteNotes.of(subject).ifPresent(elements::add);
    if (!subject.dealer().terms().isEmpty()) {
      elements.add(Paragraph.quiet(Phrase.plain(subject.dealer().terms())));
    }
    return new Section("price", Phrase.text("price.heading"), elements, false);
  }

  private Rows rows(Candidate candidate) {
    Quote quote = candidate.quote();
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            "price.equipment",
            Phrase.plain(candidate.softener().name()),
            Phrase.of(Figure.of(quote.equipment()))));
    rows.add(Row.of("price.installation", Figure.of(quote.offer().installation())));
    quote.lines().stream()
        .filter(line -> line.item().isPresent())
        .map(line -> item(line.item().orElseThrow(), line.amount()))
        .forEach(rows::add);
    rows.add(Row.of("price.tax", Figure.of(quote.tax())));
    rows.add(Row.of("price.total", Figure.of(quote.total())).summing());
    if (subject.comparison().priceList().ways().isEmpty()) {
      rows.addAll(terms(quote));
    }
    return new Rows("price", List.of(Phrase.text("price.item"), Phrase.text("price.amount")), rows);
  }

  /** Deposit and credit of the terms. */
  private List<Row> terms(Quote quote) {
    List<Row> rows = new ArrayList<>();
    if (!quote.deposit().isZero()) {
      Phrase label = Phrase.text("price.deposit", Phrase.of(Figure.of(quote.balance())));
      rows.add(Row.of("price.deposit", label, Phrase.of(Figure.of(quote.deposit()))));
    }
    subject
        .comparison()
        .priceList()
        .credit()
        .map(way -> monthly(new PaymentPlan(way, quote.total())))
        .ifPresent(rows::add);
    return rows;
  }

  private static Row item(Item item, Money amount) {
    return Row.of("item." + item.id(), PackageNames.name(item), Phrase.of(Figure.of(amount)));
  }

  private static Row monthly(PaymentPlan plan) {
    Phrase label =
        Phrase.text(
            "price.monthly",
            Phrase.of(Figure.of(plan.way().months())),
            DealFigures.rate(plan),
            Phrase.of(Figure.of(plan.total())));
    return Row.of("price.monthly", label, Phrase.of(Figure.of(plan.monthly().get(0))));
  }
}

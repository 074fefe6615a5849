package io.github.brinewright.internal.section;

import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The ways to pay for a package side by side, and what is to be known of each.
 *
 * @param subject they belong to
 * @param bought the package that is reckoned with
 */
record WaysToPay(Subject subject, SalePackage bought) {
  private static final String FIELD = "way";

  List<PaymentWay> ways() {
    return subject.comparison().priceList().ways();
  }

  private int years() {
    return bought.quote().terms().years();
  }

  private PaymentPlan plan(PaymentWay way) {
    return new PaymentPlan(way, bought.total());
  }

  List<Element> elements() {
    Phrase lead =
        Phrase.text(
            "ways.lead",
            Phrase.plain(bought.candidate().softener().name()),
            Phrase.of(Figure.of(bought.total())),
            Phrase.of(Figure.of(years())));
    List<Element> elements = new ArrayList<>(List.of(Together.of(Paragraph.of(lead), table())));
    ways().stream()
        .map(this::said)
        .filter(text -> !text.isEmpty())
        .map(Paragraph::quiet)
        .forEach(elements::add);
    return elements;
  }

  private Table table() {
    List<Table.Column> columns =
        List.of(
            column("ways.down"),
            column("ways.after"),
            column("ways.month"),
            column("ways.rate"),
            column("ways.total"),
            new Table.Column(
                "ways.years",
                Phrase.text("ways.years", Phrase.of(Figure.of(years()))),
                Table.Kind.VALUES));
    return new Table(
        "ways", Phrase.text("ways.way"), columns, ways().stream().map(this::line).toList());
  }

  private static Table.Column column(String key) {
    return new Table.Column(key, Phrase.text(key), Table.Kind.VALUES);
  }

  private Table.Line line(PaymentWay way) {
    PaymentPlan plan = plan(way);
    Table.Line line =
        Table.Line.of(
            "way." + way.id(),
            new Phrase.Local(way.name()),
            List.of(
                money(plan.down()),
                way.kind() == PaymentKind.CASH
                    ? money(plan.afterInstallation())
                    : PresentColumn.NONE,
                month(plan),
                plan.annualRate()
                    .map(rate -> Phrase.of(new Figure.Share(rate.doubleValue(), 2)))
                    .orElse(PresentColumn.NONE),
                money(plan.total()),
                years(plan)));
    return subject.signs() ? line.with(mark(way)) : line;
  }

  private static Phrase money(Money amount) {
    return Phrase.of(Figure.of(amount));
  }

  private static Phrase month(PaymentPlan plan) {
    List<Money> monthly = plan.monthly();
    return monthly.isEmpty()
        ? PresentColumn.NONE
        : Phrase.text(
            "choices.several", Phrase.of(Figure.of(monthly.size())), money(monthly.get(0)));
  }

  /** With running; not of what is given back before the years are over. */
  private Phrase years(PaymentPlan plan) {
    PaymentWay way = plan.way();
    boolean givenBack =
        way.kind() == PaymentKind.RENTAL && way.endShare().isEmpty() && way.months() < 12 * years();
    return givenBack
        ? PresentColumn.NONE
        : Phrase.of(Figure.about(plan.over(bought.candidate().life())));
  }

  /**
   * What is to be known of a way: that it is an illustration, who gives it, what comes at its end.
   */
  private Phrase said(PaymentWay way) {
    List<Phrase> sentences = new ArrayList<>();
    Phrase name = new Phrase.Local(way.name());
    PaymentPlan plan = plan(way);
    switch (way.kind()) {
      case CASH -> {}
      case CREDIT ->
          sentences.add(Phrase.text("ways.credit", name, by(way), money(plan.financeCharge())));
      case RENTAL -> sentences.add(rental(name, way, plan));
    }
    if (!way.text().isEmpty()) {
      sentences.add(new Phrase.Local(way.text()));
    }
    return Phrase.sentences(sentences);
  }

  private static Phrase by(PaymentWay way) {
    return way.creditor().isEmpty() ? Phrase.text("ways.someone") : Phrase.plain(way.creditor());
  }

  private static Phrase rental(Phrase name, PaymentWay way, PaymentPlan plan) {
    Phrase months = Phrase.of(Figure.of(way.months()));
    Phrase end =
        plan.atTheEnd()
            .map(price -> Phrase.text("ways.bought", name, by(way), months, money(price)))
            .orElseGet(() -> Phrase.text("ways.givenBack", name, by(way), months));
    Phrase service = way.serviceIncluded() ? Phrase.text("ways.served") : Phrase.NONE;
    return Phrase.sentences(List.of(end, service));
  }

  /** The place to mark a way; the same in the acceptance. */
  Field mark(PaymentWay way) {
    return Field.oneOf(
        FIELD, new Phrase.Local(way.name()), way.id().replaceAll("[^A-Za-z0-9-]", "-"));
  }

  /** Those of a proposal that has a price and ways to pay. */
  static Optional<WaysToPay> of(Subject subject) {
    return subject.isPriced() && !subject.comparison().priceList().ways().isEmpty()
        ? subject.packages().of(PackageKind.RECOMMENDED).map(each -> new WaysToPay(subject, each))
        : Optional.empty();
  }
}

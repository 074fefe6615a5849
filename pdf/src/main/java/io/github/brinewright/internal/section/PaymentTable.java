package io.github.brinewright.internal.section;

import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * How each package is paid: at once with a deposit, or month by month.
 *
 * @param subject they belong to
 * @param packages from left to right
 */
record PaymentTable(Subject subject, List<SalePackage> packages) {
  Table table() {
    List<Table.Line> lines = new ArrayList<>();
    lines.add(line("price.total", Quote::total));
    Quote first = packages.get(0).quote();
    if (first.terms().depositShare().signum() > 0) {
      lines.add(line("pay.deposit", Quote::deposit));
      lines.add(line("pay.balance", Quote::balance));
    }
    subject.comparison().priceList().credit().map(this::monthly).ifPresent(lines::addAll);
    return new Table("pay", Phrase.text("price.item"), columns(), lines);
  }

  private List<Table.Line> monthly(PaymentWay credit) {
    Phrase months = Phrase.of(Figure.of(credit.months()));
    Phrase rate = Phrase.of(new Figure.Share(credit.yearlyRate().doubleValue(), 2));
    return List.of(
        line(
            "pay.monthly",
            Phrase.text("pay.monthly", months, rate),
            quote -> new PaymentPlan(credit, quote.total()).monthly().get(0)),
        line(
            "pay.financed",
            Phrase.text("pay.financed", months),
            quote -> new PaymentPlan(credit, quote.total()).total()));
  }

  private Table.Line line(String key, Function<Quote, Money> amount) {
    return line(key, Phrase.text(key), amount);
  }

  private Table.Line line(String key, Phrase label, Function<Quote, Money> amount) {
    return Table.Line.of(
        key,
        label,
        packages.stream().map(each -> Phrase.of(Figure.of(amount.apply(each.quote())))).toList());
  }

  private List<Table.Column> columns() {
    PackageNames names = new PackageNames(subject);
    return packages.stream()
        .map(
            each ->
                new Table.Column(
                    PackageNames.code(each.kind()), names.name(each), Table.Kind.VALUES))
        .toList();
  }
}

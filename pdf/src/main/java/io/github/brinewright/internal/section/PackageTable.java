package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.BillLine;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * Packages side by side: what is in the price of each, line by line, and what a year takes.
 *
 * @param subject they belong to
 * @param packages from left to right
 */
record PackageTable(Subject subject, List<SalePackage> packages) {
  Table table() {
    List<Table.Line> lines = new ArrayList<>();
    lines.add(line("compare.bed", each -> new Phrase.Bed(each.candidate().resin())));
    lines.add(line("compare.control", each -> CandidateRow.control(each.candidate())));
    lines.add(part("choices.equipment", BillLine.Part.SOFTENER));
    lines.add(part("price.installation", BillLine.Part.INSTALLATION));
    items().forEach(item -> lines.add(item(item)));
    if (packages.stream().anyMatch(each -> !each.quote().tax().isZero())) {
      lines.add(line("price.tax", each -> money(each.quote().tax())));
    }
    lines.add(line("price.total", each -> money(each.total())).summing());
    subject.comparison().priceList().credit().map(this::monthly).ifPresent(lines::add);
    lines.add(line("choices.yearly", each -> Phrase.of(Figure.about(each.yearlyCost()))));
    lines.add(life());
    lines.add(line("compare.hard", this::hard));
    return new Table("choices", Phrase.text("choices.row"), columns(), lines);
  }

  private List<Table.Column> columns() {
    PackageNames names = new PackageNames(subject);
    return packages.stream()
        .map(
            each -> {
              Table.Kind kind =
                  each.kind() == PackageKind.RECOMMENDED && !subject.keeps()
                          || each.kind() == PackageKind.KEEP && subject.keeps()
                      ? Table.Kind.CHOSEN
                      : Table.Kind.VALUES;
              Table.Column column =
                  new Table.Column(PackageNames.code(each.kind()), names.name(each), kind);
              return subject.signs() && packages.size() > 1
                  ? column.with(names.mark(each))
                  : column;
            })
        .toList();
  }

  private Table.Line line(String key, Function<SalePackage, Phrase> cell) {
    return Table.Line.of(key, packages.stream().map(cell).toList());
  }

  private static Phrase money(Money amount) {
    return Phrase.of(Figure.of(amount));
  }

  private Table.Line part(String key, BillLine.Part part) {
    return line(
        key,
        each ->
            each.lines().stream()
                .filter(line -> line.part() == part)
                .map(line -> money(line.amount()))
                .findFirst()
                .orElse(Phrase.NONE));
  }

  /** All items of any of them, in the order of their bills. */
  private Set<Item> items() {
    Set<Item> items = new LinkedHashSet<>();
    packages.forEach(each -> each.lines().forEach(line -> line.item().ifPresent(items::add)));
    return items;
  }

  private Table.Line item(Item item) {
    return Table.Line.of(
        "item." + item.id(),
        PackageNames.name(item),
        packages.stream().map(each -> amount(each, item)).toList());
  }

  private static Phrase amount(SalePackage each, Item item) {
    return each.lines().stream()
        .filter(line -> line.item().filter(item::equals).isPresent())
        .map(line -> money(line.amount()))
        .findFirst()
        .orElse(PresentColumn.NONE);
  }

  /** Gallons, and the days of mean use that they are. */
  private Phrase hard(SalePackage each) {
    return each.hardWater()
        .map(hard -> HardWaterText.of(hard, subject.comparison().home()))
        .orElse(PresentColumn.NONE);
  }

  private Table.Line monthly(PaymentWay credit) {
    Phrase label =
        Phrase.text(
            "choices.monthly",
            Phrase.of(Figure.of(credit.months())),
            Phrase.of(new Figure.Share(credit.yearlyRate().doubleValue(), 2)));
    return Table.Line.of(
        "choices.monthly",
        label,
        packages.stream()
            .map(each -> money(new PaymentPlan(credit, each.total()).monthly().get(0)))
            .toList());
  }

  private Table.Line life() {
    Candidate first = packages.get(0).candidate();
    Phrase label = Phrase.text("compare.life", Phrase.of(Figure.of(first.life().years())));
    return Table.Line.of(
        "compare.life",
        label,
        packages.stream()
            .map(each -> Phrase.of(Figure.about(each.candidate().life().total())))
            .toList());
  }
}

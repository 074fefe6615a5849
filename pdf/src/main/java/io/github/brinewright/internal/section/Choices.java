package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Item;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.sale.Packages.Combination;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the customer chooses from: packages, what may be added, and what that comes to. */
public final class Choices {
  private final Subject subject;
  private final Packages packages;
  private final PackageNames names;

  /** The section of a proposal. */
  public Choices(Subject subject) {
    this.subject = subject;
    packages = subject.packages();
    names = new PackageNames(subject);
  }

  /** The section; empty where there is nothing to choose. */
  public Optional<Section> section() {
    if (!subject.offersChoices()) {
      return Optional.empty();
    }
    List<Element> elements = new ArrayList<>();
    elements.add(
        Together.of(Paragraph.of(lead()), new PackageTable(subject, packages.all()).table()));
    Notes notes = notes();
    if (!notes.rows().isEmpty()) {
      elements.add(Heading.of(Phrase.text("compare.notes")));
      elements.add(notes);
    }
    if (!packages.extras().isEmpty()) {
      elements.add(Together.of(Heading.of(Phrase.text("choices.extras")), extras()));
    }
    totals().ifPresent(elements::add);
    return Optional.of(new Section("choices", Phrase.text("choices.heading"), elements, false));
  }

  private Phrase lead() {
    if (!subject.signs()) {
      boolean tests = !subject.comparison().verdict().permitsSignature();
      return Phrase.text(tests ? "choices.notYet" : "choices.unsigned");
    }
    boolean several = packages.all().size() > 1;
    boolean more = !packages.extras().isEmpty();
    return Phrase.text(several ? more ? "choices.lead" : "choices.leadMark" : "choices.leadTick");
  }

  /** How each package but the recommended one differs from that. */
  private Notes notes() {
    List<Row> rows = new ArrayList<>();
    for (SalePackage each : packages.all()) {
      if (each.kind() != PackageKind.KEEP) {
        subject
            .comparison()
            .against(each.candidate())
            .map(
                reason ->
                    Row.of(
                        PackageNames.code(each.kind()),
                        names.name(each),
                        new Phrase.Because(reason)))
            .ifPresent(rows::add);
      }
    }
    return new Notes(rows);
  }

  private Table extras() {
    List<Table.Column> columns =
        List.of(
            new Table.Column("what", Phrase.text("choices.what"), Table.Kind.TEXT),
            new Table.Column("price", Phrase.text("choices.withTax"), Table.Kind.MAIN));
    return new Table(
        "extras",
        Phrase.text("choices.extra"),
        columns,
        packages.extras().stream().map(this::extra).toList());
  }

  private Table.Line extra(Item item) {
    Extra extra = new Extra(subject, item);
    Table.Line line =
        Table.Line.of(
            "extra." + item.id(),
            PackageNames.name(item),
            List.of(extra.said(), Phrase.of(Figure.of(extra.price()))));
    return subject.signs() ? line.with(names.tick(item)) : line;
  }

  /** Every total, where there are few enough. */
  private Optional<Element> totals() {
    Map<List<Item>, List<Phrase>> byTicks = new LinkedHashMap<>();
    for (Combination each : packages.combinations()) {
      byTicks
          .computeIfAbsent(each.ticked(), ticked -> new ArrayList<>())
          .add(Phrase.of(Figure.of(each.total())));
    }
    List<Table.Line> lines = new ArrayList<>();
    byTicks.forEach(
        (ticked, totals) -> lines.add(Table.Line.of(key(ticked), ticked(ticked), totals)));
    List<Table.Column> columns =
        packages.all().stream()
            .map(
                each ->
                    new Table.Column(
                        PackageNames.code(each.kind()), names.name(each), Table.Kind.VALUES))
            .toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Together.of(
                Heading.of(Phrase.text("choices.totals")),
                new Table("totals", Phrase.text("choices.total"), columns, lines)));
  }

  private static String key(List<Item> ticked) {
    return "total" + ticked.stream().map(item -> "." + item.id()).reduce("", String::concat);
  }

  private static Phrase ticked(List<Item> ticked) {
    return ticked.isEmpty()
        ? Phrase.text("choices.nothing")
        : new Phrase.Listed(ticked.stream().map(PackageNames::name).toList());
  }
}

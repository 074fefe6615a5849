package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.FieldGrid;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Languages;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The fields of a site visit: each bears the name of its column in sites.csv. */
public final class VisitForm {
  /** Column whose cell is spread over a field for each kind of fixture. */
  public static final String FIXTURES = "fixtures";

  private static final Pattern COUNT = Pattern.compile("(\\d{1,3})\\s+([a-z_]+)");
  private static final Field.Choice NONE = new Field.Choice("", " ");
  private static final Set<Column.Kind> WIDE = EnumSet.of(Column.Kind.TEXT, Column.Kind.REFERENCE);

  private final Stationery stationery;
  private final Map<String, String> cells;
  private final List<Tariff> tariffs;
  private final Tag tag;

  /**
   * A form.
   *
   * @param cells what it begins with, by column
   * @param tariffs to choose from
   */
  public VisitForm(Stationery stationery, Map<String, String> cells, List<Tariff> tariffs) {
    this.stationery = stationery;
    this.cells = Map.copyOf(cells);
    this.tariffs = List.copyOf(tariffs);
    tag = stationery.root().child(Tag.Role.SECTION);
  }

  /** Name of the field that counts the fixtures of a kind. */
  public static String nameOf(Fixture fixture) {
    return FIXTURES + "_" + SiteCells.word(fixture);
  }

  /** The form as a block. */
  public Block block() {
    return Block.stack(
        List.of(
            new Masthead(stationery, tag).block(),
            new Paragraph(
                    tag.child(Tag.Role.H1),
                    stationery.text("form.heading"),
                    TextStyle.HEADING.sized(21))
                .after(16),
            stationery.quiet(tag, stationery.text("form.lead")).after(3),
            part("form.home", 4, fields("home")),
            part("form.water", 4, fields("water")),
            part("form.people", 5, fields("people")),
            part("form.supply", 6, fields("supply")),
            part("form.fixtures", 5, fixtures())));
  }

  private Block part(String heading, int columns, List<FieldGrid.Entry> entries) {
    Block title = stationery.subheading(tag, Tag.Role.H2, stationery.text(heading)).after(11);
    Tag fields = tag.child(Tag.Role.DIVISION);
    return Block.stack(List.of(title, new FieldGrid(fields, columns, TextStyle.SMALL, entries)));
  }

  /** The fields of a part, one for each of its columns. */
  private List<FieldGrid.Entry> fields(String part) {
    return SiteColumns.all().stream()
        .filter(column -> column.part().equals(part))
        .map(column -> new FieldGrid.Entry(field(column), WIDE.contains(column.kind()) ? 2 : 1))
        .toList();
  }

  private Field field(Column column) {
    Field field =
        switch (column.kind()) {
          case CHOICE -> choice(column);
          case LOCALE -> language(column);
          case REFERENCE -> tariff(column);
          default -> text(column.name());
        };
    return column.needed() ? field.mandatory() : field;
  }

  private List<FieldGrid.Entry> fixtures() {
    Map<String, Integer> counts = counts(cells.getOrDefault(FIXTURES, ""));
    return Arrays.stream(Fixture.values())
        .map(
            fixture ->
                Field.text(nameOf(fixture), stationery.words().term(fixture))
                    .containing(Objects.toString(counts.get(SiteCells.word(fixture)), "")))
        .map(VisitForm::one)
        .toList();
  }

  /** Numbers before names, as in "2 shower 3 lavatory"; what is written otherwise is left out. */
  private static Map<String, Integer> counts(String cell) {
    Map<String, Integer> counts = new HashMap<>();
    COUNT
        .matcher(cell.toLowerCase(Locale.ROOT))
        .results()
        .forEach(
            found -> counts.merge(found.group(2), Integer.valueOf(found.group(1)), Integer::sum));
    return counts;
  }

  private static FieldGrid.Entry one(Field field) {
    return new FieldGrid.Entry(field, 1);
  }

  private Field text(String column) {
    return Field.text(column, label(column)).containing(value(column));
  }

  private Field choice(Column column) {
    Stream<Field.Choice> choices =
        column.constants().stream()
            .map(each -> new Field.Choice(SiteCells.word(each), stationery.words().term(each)));
    return choice(column.name(), choices).containing(value(column.name()).toLowerCase(Locale.ROOT));
  }

  private Field choice(String column, Stream<Field.Choice> choices) {
    return Field.choice(column, label(column), Stream.concat(Stream.of(NONE), choices).toList())
        .containing(value(column));
  }

  /** Each language by its own name, for the people who read it. */
  private Field language(Column column) {
    return choice(
        column.name(),
        Languages.USUAL.stream()
            .map(
                locale ->
                    new Field.Choice(locale.toLanguageTag(), locale.getDisplayLanguage(locale))));
  }

  private Field tariff(Column column) {
    return choice(
        column.name(), tariffs.stream().map(each -> new Field.Choice(each.id(), each.name())));
  }

  private String value(String column) {
    return cells.getOrDefault(column, "");
  }

  private String label(String column) {
    return stationery.text("form.field." + column);
  }
}

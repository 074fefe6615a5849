package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Languages;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Field.Choice;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Fields.Entry;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import java.util.Arrays;
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

  private static final Set<String> WIDE = Set.of("customer", "street", "town", "tariff_id");

  private static final Pattern COUNT = Pattern.compile("(\\d{1,3})\\s+([a-z_]+)");
  private static final Choice NONE = new Choice("", Phrase.plain(" "));

  private final Map<String, String> cells;
  private final List<Tariff> tariffs;

  /**
   * A form.
   *
   * @param cells what it begins with, by column
   * @param tariffs to choose from
   */
  public VisitForm(Map<String, String> cells, List<Tariff> tariffs) {
    this.cells = Map.copyOf(cells);
    this.tariffs = List.copyOf(tariffs);
  }

  /** Name of the field that counts the fixtures of a kind. */
  public static String nameOf(Fixture fixture) {
    return FIXTURES + "_" + SiteCells.word(fixture);
  }

  /** The sections of the form: a field for each column, in the order of the columns. */
  public List<Section> sections() {
    return List.of(
        section("home", 4),
        section("water", 4),
        section("treated", 4),
        section("people", 4),
        section("supply", 4),
        section("fixtures", 5, fixtures()));
  }

  private Section section(String part, int columns) {
    return section(
        part,
        columns,
        SiteColumns.all().stream()
            .filter(column -> column.part().equals(part))
            .map(this::entry)
            .toList());
  }

  private static Section section(String part, int columns, List<Entry> entries) {
    String key = "form." + part;
    return Section.of(key, Phrase.text(key), new Fields(columns, entries));
  }

  private Entry entry(Column column) {
    return new Entry(field(column), WIDE.contains(column.name()) ? 2 : 1);
  }

  private Field field(Column column) {
    if (column.kind() == Column.Kind.LOCALE) {
      return language(column.name());
    }
    if (column.kind() == Column.Kind.REFERENCE) {
      return tariff(column.name());
    }
    Field field =
        column.constants().isEmpty()
            ? text(column.name())
            : choice(column.name(), column.constants());
    return column.needed() ? field.mandatory() : field;
  }

  private List<Entry> fixtures() {
    Map<String, Integer> counts = counts(value(FIXTURES));
    return Arrays.stream(Fixture.values())
        .map(
            fixture ->
                Field.of(Field.Kind.TEXT, nameOf(fixture), Phrase.of(fixture))
                    .containing(Objects.toString(counts.get(SiteCells.word(fixture)), "")))
        .map(Entry::of)
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

  private Field text(String column) {
    return Field.of(Field.Kind.TEXT, column, label(column)).containing(value(column));
  }

  private Field choice(String column, List<Enum<?>> constants) {
    Stream<Choice> choices =
        constants.stream().map(each -> new Choice(SiteCells.word(each), Phrase.of(each)));
    return choice(column, choices).containing(value(column).toLowerCase(Locale.ROOT));
  }

  private Field choice(String column, Stream<Choice> choices) {
    List<Choice> all = Stream.concat(Stream.of(NONE), choices).toList();
    return Field.choice(column, label(column), all).containing(value(column));
  }

  /** Each language by its own name, for the people who read it. */
  private Field language(String column) {
    return choice(
        column,
        Languages.USUAL.stream()
            .map(
                locale ->
                    new Choice(
                        locale.toLanguageTag(), Phrase.plain(locale.getDisplayLanguage(locale)))));
  }

  private Field tariff(String column) {
    return choice(
        column, tariffs.stream().map(each -> new Choice(each.id(), Phrase.plain(each.name()))));
  }

  private String value(String column) {
    return cells.getOrDefault(column, "");
  }

  private static Phrase label(String column) {
    return Phrase.text("form.field." + column);
  }
}

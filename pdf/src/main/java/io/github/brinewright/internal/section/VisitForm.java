package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Languages;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Field.Choice;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Fields.Entry;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import java.util.ArrayList;
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

  private static final String RESIN = "present_resin_id";
  private static final Set<String> WIDE =
      Set.of(
          "customer",
          "customer_latin",
          "street",
          "town",
          "notes",
          "tariff_id",
          "present_control",
          RESIN,
          "present_readings");

  /**
   * Fields that belong together, from one column up to where the next group begins.
   *
   * @param first column of them
   * @param lead key of what is said above them
   * @param columns how many fields stand side by side
   */
  private record Group(String first, String lead, int columns) {}

  private static final List<Group> PRESENT =
      List.of(
          new Group("present_control", "form.present.control", 5),
          new Group("present_rated_grains", "form.present.bed", 4),
          new Group("present_dosage_lb_per_ft3", "form.present.salt", 4),
          new Group("present_hardness_after_gpg", "form.present.measured", 4));

  private static final Pattern COUNT = Pattern.compile("(\\d{1,3})\\s+([a-z_]+)");
  private static final Choice NONE = new Choice("", Phrase.plain(" "));

  private final Map<String, String> cells;
  private final List<Tariff> tariffs;
  private final List<Resin> resins;

  /**
   * A form.
   *
   * @param cells what it begins with, by column
   * @param tariffs to choose from
   * @param resins to choose from
   */
  public VisitForm(Map<String, String> cells, List<Tariff> tariffs, List<Resin> resins) {
    this.cells = Map.copyOf(cells);
    this.tariffs = List.copyOf(tariffs);
    this.resins = List.copyOf(resins);
  }

  /** Name of the field that counts the fixtures of a kind. */
  public static String nameOf(Fixture fixture) {
    return FIXTURES + "_" + SiteCells.word(fixture);
  }

  /** The sections of the form: a field for each column, in the order of the columns. */
  public List<Section> sections() {
    return List.of(
        section("home", 5),
        section("water", 4),
        section("treated", 4),
        section("people", 4),
        section("supply", 4),
        section("fixtures", List.of(new Fields(5, fixtures()))),
        present());
  }

  private static List<Column> columns(String part) {
    return SiteColumns.all().stream().filter(column -> column.part().equals(part)).toList();
  }

  private Section section(String part, int columns) {
    return section(part, List.of(fields(columns(part), columns)));
  }

  /** What is there already, in groups. */
  private Section present() {
    List<Column> all = columns("present");
    List<String> names = all.stream().map(Column::name).toList();
    List<Element> groups = new ArrayList<>();
    int end = all.size();
    for (int i = PRESENT.size() - 1; i >= 0; i--) {
      Group group = PRESENT.get(i);
      int begin = names.indexOf(group.first());
      Paragraph lead = Paragraph.quiet(Phrase.text(group.lead()));
      groups.add(0, Together.of(lead, fields(all.subList(begin, end), group.columns())));
      end = begin;
    }
    return section("present", groups);
  }

  private Fields fields(List<Column> columns, int across) {
    return new Fields(across, columns.stream().map(this::entry).toList());
  }

  private static Section section(String part, List<Element> elements) {
    String key = "form." + part;
    return new Section(key, Phrase.text(key), elements, false);
  }

  private Entry entry(Column column) {
    return new Entry(field(column), WIDE.contains(column.name()) ? 2 : 1);
  }

  private Field field(Column column) {
    if (column.kind() == Column.Kind.LOCALE) {
      return language(column.name());
    }
    if (column.kind() == Column.Kind.REFERENCE) {
      return column.name().equals(RESIN) ? resin() : tariff(column.name());
    }
    Field field =
        column.kind() == Column.Kind.CHOICE
            ? choice(column.name(), column.constants())
            : text(column.name());
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

  /** Resins by their names, those that come with the library in the reader's language. */
  private Field resin() {
    return choice(RESIN, resins.stream().map(resin -> new Choice(resin.id(), nameOf(resin))));
  }

  private static Phrase nameOf(Resin resin) {
    return ShippedResins.all().contains(resin)
        ? Phrase.text("form.resin." + resin.id())
        : Phrase.plain(resin.name());
  }

  private String value(String column) {
    return cells.getOrDefault(column, "");
  }

  private static Phrase label(String column) {
    return Phrase.text("form.field." + column);
  }
}

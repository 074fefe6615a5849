package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.job.Languages;
import io.github.brinewright.job.SiteCells;
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
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The fields of a site visit: each bears the name of its column in sites.csv. */
public final class VisitForm {
  /** Column whose cell is spread over a field for each kind of fixture. */
  public static final String FIXTURES = "fixtures";

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

  /** The sections of the form. */
  public List<Section> sections() {
    return List.of(
        section("form.home", 4, home()),
        section("form.water", 4, water()),
        section("form.people", 5, people()),
        section("form.supply", 6, supply()),
        section("form.fixtures", 5, fixtures()));
  }

  private static Section section(String key, int columns, List<Entry> entries) {
    return Section.of(key, Phrase.text(key), new Fields(columns, entries));
  }

  private List<Entry> home() {
    return List.of(
        Entry.of(text("site_id").mandatory()),
        new Entry(text("customer"), 2),
        Entry.of(language()),
        new Entry(text("street"), 2),
        new Entry(text("town"), 2));
  }

  private List<Entry> water() {
    return Stream.of(
            text("hardness_gpg"),
            text("hardness_mg_per_l"),
            choice("water_source", WaterSource.values()),
            text("tested_on"),
            text("iron_mg_per_l"),
            text("dissolved_iron_mg_per_l"),
            text("manganese_mg_per_l"),
            text("ph"),
            text("tds_mg_per_l"),
            text("sodium_mg_per_l"),
            text("chloride_mg_per_l"),
            text("free_chlorine_mg_per_l"),
            text("hydrogen_sulfide_mg_per_l"),
            text("temperature_f"),
            choice("bacteria", BacteriaResult.values()),
            text("target_hardness_gpg"))
        .map(Entry::of)
        .toList();
  }

  private List<Entry> people() {
    return Stream.of(
            text("people").mandatory(),
            text("bathrooms"),
            text("use_gal_per_person_day"),
            text("bill_gal"),
            text("bill_days"),
            choice("softened", SoftenedShare.values()),
            text("away_days_per_year"),
            text("guests"),
            text("guest_days_per_year"))
        .map(Entry::of)
        .toList();
  }

  private List<Entry> supply() {
    return List.of(
        Entry.of(text("pressure_psi")),
        Entry.of(text("flow_gpm")),
        new Entry(tariff(), 2),
        Entry.of(text("iron_allowance_gpg")),
        Entry.of(text("manganese_allowance_gpg")));
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

  private Field choice(String column, Enum<?>[] constants) {
    Stream<Choice> choices =
        Arrays.stream(constants).map(each -> new Choice(SiteCells.word(each), Phrase.of(each)));
    return choice(column, choices).containing(value(column).toLowerCase(Locale.ROOT));
  }

  private Field choice(String column, Stream<Choice> choices) {
    List<Choice> all = Stream.concat(Stream.of(NONE), choices).toList();
    return Field.choice(column, label(column), all).containing(value(column));
  }

  /** Each language by its own name, for the people who read it. */
  private Field language() {
    return choice(
        "language",
        Languages.USUAL.stream()
            .map(
                locale ->
                    new Choice(
                        locale.toLanguageTag(), Phrase.plain(locale.getDisplayLanguage(locale)))));
  }

  private Field tariff() {
    return choice(
        "tariff_id",
        tariffs.stream().map(each -> new Choice(each.id(), Phrase.plain(each.name()))));
  }

  private String value(String column) {
    return cells.getOrDefault(column, "");
  }

  private static Phrase label(String column) {
    return Phrase.text("form.field." + column);
  }
}

package io.github.brinewright.area;

import io.github.brinewright.area.Totals.Count;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.proposal.OwnDocument;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.TextFiles;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two pages on a service area: what its softeners take now, what would change it, and by district.
 *
 * @param town the sums
 * @param assumed what they take as given
 * @param invented whether the homes are invented
 * @param metric whether metric units are printed
 */
record AreaReport(Town town, Assumed assumed, boolean invented, boolean metric) {
  /** Its texts, in the languages of the library. */
  static final Texts TEXTS =
      new TextFiles(
          "area", List.of("es", "fr"), file -> AreaReport.class.getResourceAsStream(file));

  private static final List<Scenario> CHANGES = List.of(Scenario.values()).subList(1, 7);

  private static final int MOST_DISTRICTS = 8;

  /** Those that a district is looked at by. */
  private static final List<Scenario> OF_DISTRICT =
      List.of(Scenario.ALL_SET_RIGHT, Scenario.CLOCKS_METERED, Scenario.SOFTER_SOURCE_SET_RIGHT);

  byte[] toPdf(Dealer dealer, LocalDate date) {
    UnitSystem system = metric ? UnitSystem.METRIC : UnitSystem.US;
    return OwnDocument.report(Phrase.text("area.heading"), dealer, date, sections())
        .toPdf(DocumentTexts.words(dealer.locale(), system, TEXTS));
  }

  List<Section> sections() {
    return List.of(now(), scenarios(), districts(), meanings(), rests());
  }

  private Drawn all() {
    return new Drawn(town.all());
  }

  private AreaFigures figures() {
    return new AreaFigures(metric);
  }

  private Section now() {
    Totals totals = town.all();
    List<Element> elements = new ArrayList<>();
    if (invented) {
      elements.add(Paragraph.strong(Phrase.text("area.invented")));
    }
    elements.add(
        Paragraph.of(
            Phrase.text(
                "area.homes",
                count(totals, Count.ROWS),
                count(totals, Count.SOFTENERS),
                count(totals, Count.CLOCKS))));
    refused(totals).ifPresent(elements::add);
    elements.add(
        new Facts(
            List.of(
                fact("area.salt", figures().mass(sum(Measure.SALT_MG))),
                fact("area.chloride", figures().mass(sum(Measure.CHLORIDE_MG))),
                fact("area.water", figures().volume(sum(Measure.WATER_ML))))));
    return new Section("area.now", Phrase.text("area.now"), elements, false);
  }

  private static Optional<Element> refused(Totals totals) {
    return totals.of(Count.REFUSED) == 0
        ? Optional.empty()
        : Optional.of(Paragraph.quiet(Phrase.text("area.refused", count(totals, Count.REFUSED))));
  }

  private static Phrase count(Totals totals, Count what) {
    return Phrase.of(Figure.of((double) totals.of(what), 0));
  }

  private Spread sum(Measure measure) {
    return all().sum(Scenario.AS_FOUND, measure);
  }

  private static Row fact(String key, Phrase value) {
    return Row.of(key, Phrase.text(key), value);
  }

  private Section scenarios() {
    List<Table.Line> lines = Stream.of(Scenario.values()).map(this::line).toList();
    Table table =
        new Table(
            "area.scenarios",
            Phrase.text("area.scenario"),
            List.of(
                column("area.column.salt"),
                column("area.column.chloride"),
                column("area.column.change"),
                column("area.column.water"),
                column("area.column.hard")),
            lines);
    return Section.of(
        "area.scenarios",
        Phrase.text("area.scenarios"),
        Paragraph.quiet(Phrase.text("area.ranges")),
        table,
        Paragraph.strong(Phrase.text("area.promise")));
  }

  private static Table.Column column(String key) {
    return new Table.Column(key, Phrase.text(key), Table.Kind.VALUES);
  }

  private Table.Line line(Scenario scenario) {
    return Table.Line.of(
        scenario.code(),
        name(scenario),
        List.of(
            figures().mass(all().sum(scenario, Measure.SALT_MG)),
            figures().mass(all().sum(scenario, Measure.CHLORIDE_MG)),
            scenario == Scenario.AS_FOUND ? Phrase.plain("–") : change(all(), scenario),
            figures().volume(all().sum(scenario, Measure.WATER_ML)),
            AreaFigures.ranged(all().each(scenario, Measure.RUN_OUT_DAYS_MILLIONTHS))));
  }

  private static Phrase change(Drawn of, Scenario scenario) {
    return AreaFigures.change(of.change(scenario, Measure.CHLORIDE_MG));
  }

  private static Phrase name(Scenario scenario) {
    return Phrase.text("area." + scenario.code());
  }

  /** Those with most softeners, so that two pages do. */
  private List<String> shown() {
    return town.names().stream()
        .sorted(Comparator.comparing((String name) -> -town.of(name).of(Count.SOFTENERS)))
        .limit(MOST_DISTRICTS)
        .sorted()
        .toList();
  }

  private Phrase districtsLead() {
    int left = town.names().size() - shown().size();
    Phrase lead = Phrase.text("area.districts.lead");
    return left == 0
        ? lead
        : Phrase.sentences(
            List.of(lead, Phrase.text("area.districts.more", Phrase.of(Figure.of(left)))));
  }

  private Section districts() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(column("area.column.softeners"));
    columns.add(column("area.column.chloride"));
    OF_DISTRICT.forEach(
        scenario ->
            columns.add(new Table.Column(scenario.code(), name(scenario), Table.Kind.VALUES)));
    return Section.of(
            "area.districts",
            Phrase.text("area.districts"),
            Paragraph.quiet(districtsLead()),
            new Table(
                "area.districts",
                Phrase.text("area.district"),
                columns,
                shown().stream().map(this::line).toList()))
        .onOwnPage();
  }

  private Table.Line line(String district) {
    Drawn drawn = new Drawn(town.of(district));
    List<Phrase> cells = new ArrayList<>();
    cells.add(count(drawn.totals(), Count.SOFTENERS));
    cells.add(figures().mass(drawn.sum(Scenario.AS_FOUND, Measure.CHLORIDE_MG)));
    OF_DISTRICT.forEach(scenario -> cells.add(change(drawn, scenario)));
    return Table.Line.of(district, Phrase.plain(district), cells);
  }

  private Section meanings() {
    return Section.of(
        "area.meanings",
        Phrase.text("area.meanings"),
        new Items(CHANGES.stream().map(this::meaning).toList(), true));
  }

  private Phrase meaning(Scenario scenario) {
    return Phrase.text(
        "area." + scenario.code() + ".meaning", Phrase.of(Figure.of(assumed.source())));
  }

  private Section rests() {
    return Section.of(
        "area.rests",
        Phrase.text("area.rests"),
        Paragraph.of(Phrase.text("area.computed")),
        Paragraph.of(
            Phrase.text("area.unknown", Phrase.of(Figure.of(Math.max(1, assumed.draws()))))),
        Paragraph.of(Phrase.text("area.published")),
        Paragraph.strong(Phrase.text("area.law")),
        Paragraph.quiet(new Phrase.Warned(Caution.LOCAL_RULES)));
  }
}

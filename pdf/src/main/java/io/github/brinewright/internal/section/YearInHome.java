package io.github.brinewright.internal.section;

import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.HowSure;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The simulated year: what each control would take, and whether the recommendation holds. */
public final class YearInHome {
  /** A spread of less than this is not worth a word. */
  private static final double NARROW = 0.5;

  private final HomeStudy study;
  private final Subject subject;

  /** The section of a proposal. */
  public YearInHome(HomeStudy study, Subject subject) {
    this.study = study;
    this.subject = subject;
  }

  /** The section. */
  public Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Together.of(Paragraph.of(lead()), table()));
    elements.add(
        Together.of(
            Heading.of(Phrase.text("year.days")),
            new RegenerationDays(study, subject.present()).chart()));
    subject.present().map(PresentColumn::assumed).ifPresent(elements::add);
    new YearFindings(study, subject).sentences().forEach(text -> elements.add(Paragraph.of(text)));
    return new Section("year", Phrase.text("year.heading"), elements, false);
  }

  /** How sure the recommendation is and what would make it another one, for the appendix. */
  public Section changes() {
    List<Element> elements = new ArrayList<>();
    sure().map(Paragraph::of).ifPresent(elements::add);
    new YearFindings(study, subject).reasons().forEach(text -> elements.add(Paragraph.of(text)));
    elements.add(Together.of(Heading.of(Phrase.text("changes.causes")), causes()));
    return new Section("changes", Phrase.text("changes.heading"), elements, false);
  }

  private Optional<Phrase> sure() {
    return HowSure.of(subject.comparison()).stream()
        .map(each -> each.bestInPercentOfDraws(study.candidate()))
        .flatMapToInt(OptionalInt::stream)
        .mapToObj(percent -> Phrase.text(sureText(), Phrase.of(Figure.of(percent))))
        .findFirst();
  }

  private String sureText() {
    return subject.present().isPresent() ? "now.sure" : "study.HOW_SURE";
  }

  private Phrase lead() {
    Phrase years = Phrase.of(Figure.of(study.years()));
    return subject.present().isEmpty()
        ? Phrase.text("year.lead", years)
        : Phrase.text("now.year.lead", years, Phrase.plain(study.candidate().softener().name()));
  }

  private Table table() {
    return table(
        "year",
        List.of(
            line("year.regenerations", years -> range(years.regenerations(), YearInHome::whole)),
            line(
                "year.salt",
                years -> range(years.saltPounds(), value -> Figure.of(Mass.ofPounds(value), 0))),
            line(
                "year.water",
                years -> range(years.waterGallons(), value -> Figure.of(Volume.ofGallons(value)))),
            line("year.hardTotal", this::hardInAll),
            Table.Line.of("year.cost", costs())));
  }

  /** Where the hard water comes from, and what is left unused. */
  private Table causes() {
    return table(
        "causes",
        List.of(
            line("year.hardRunOut", years -> range(years.hardGallons(), YearInHome::gallons)),
            line("year.hardDays", years -> range(years.hardDays(), YearInHome::days)),
            line("year.hardCycle", years -> range(years.cycleGallons(), YearInHome::gallons)),
            line("year.unused", years -> Phrase.of(Figure.percent(years.unusedShare())))));
  }

  private Table table(String key, List<Table.Line> lines) {
    Stream<Table.Column> controls = study.controls().keySet().stream().map(this::column);
    List<Table.Column> columns =
        Stream.concat(subject.present().map(PresentColumn::head).stream(), controls).toList();
    return new Table(key, Phrase.text("year.control"), columns, lines);
  }

  private Table.Column column(Control control) {
    return control == study.recommended()
        ? new Table.Column(
            Row.key(control),
            Phrase.text("year.recommended", Phrase.of(control)),
            Table.Kind.CHOSEN)
        : new Table.Column(Row.key(control), Phrase.of(control), Table.Kind.VALUES);
  }

  private Table.Line line(String key, Function<SimulatedYears, Phrase> cell) {
    Stream<SimulatedYears> now = subject.present().map(column -> column.asFound().years()).stream();
    return Table.Line.of(
        key, Stream.concat(now, study.controls().values().stream()).map(cell).toList());
  }

  private List<Phrase> costs() {
    Stream<Money> now = subject.present().map(PresentColumn::saltAndWater).stream();
    return Stream.concat(now, study.costs().values().stream())
        .map(cost -> Phrase.of(Figure.about(cost)))
        .toList();
  }

  /** From all causes: gallons, and the days of mean use that they are. */
  private Phrase hardInAll(SimulatedYears years) {
    return HardWaterText.of(years.hardWater(), study.candidate().design().home());
  }

  private static Figure gallons(double value) {
    return Figure.of(Volume.ofGallons(value), 0);
  }

  private static Figure whole(double value) {
    return Figure.of(value, 0);
  }

  private static Figure days(double value) {
    return Figure.of(value, value < 10 ? 1 : 0);
  }

  /** The mean and, in brackets, where nine years out of ten lie. */
  private static Phrase range(Spread spread, DoubleFunction<Figure> figure) {
    Phrase mean = Phrase.of(figure.apply(spread.mean()));
    if (spread.high() - spread.low() < NARROW) {
      return mean;
    }
    return Phrase.text(
        "year.range",
        mean,
        new Phrase.Bare(figure.apply(Math.round(spread.low()))),
        new Phrase.Bare(figure.apply(Math.round(spread.high()))));
  }
}

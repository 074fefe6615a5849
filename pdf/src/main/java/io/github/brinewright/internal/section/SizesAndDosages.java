package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Grid;
import io.github.brinewright.comparison.Mark;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The grid of one control: what more resin buys, and what more salt buys. */
final class SizesAndDosages {
  private final Subject subject;
  private final Comparison comparison;
  private final Control control;
  private final List<Grid.Row> rows;
  private final List<Integer> shown;
  private final List<SaltDosage> dosages;
  private final boolean rated;

  private SizesAndDosages(Subject subject, Predicate<Grid.Row> wanted) {
    this.subject = subject;
    comparison = subject.comparison();
    Grid grid = comparison.grid(comparison.closest().setup().control());
    control = grid.control();
    dosages = grid.dosages();
    rows = grid.rows().stream().filter(wanted).toList();
    shown = IntStream.range(0, dosages.size()).filter(this::isSold).boxed().toList();
    rated = rows.stream().anyMatch(row -> row.byRating().isPresent());
  }

  private boolean isSold(int dosage) {
    return rows.stream().anyMatch(row -> row.cells().get(dosage).isPresent());
  }

  /** The whole grid of the recommended candidate's control. */
  static SizesAndDosages of(Subject subject) {
    return new SizesAndDosages(subject, row -> true);
  }

  /** The same of the units of some candidates alone. */
  static SizesAndDosages of(Subject subject, List<Candidate> candidates) {
    List<Softener> units = candidates.stream().map(Candidate::softener).toList();
    return new SizesAndDosages(subject, row -> units.contains(row.softener()));
  }

  /** The section of a proposal. */
  Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Together.of(Paragraph.of(lead()), table()));
    List<Row> neighbours =
        Stream.of(
                neighbour("opening.smaller", comparison.smaller()),
                neighbour("opening.larger", comparison.larger()))
            .flatMap(Optional::stream)
            .toList();
    if (!neighbours.isEmpty()) {
      elements.add(new Notes(neighbours));
    }
    return new Section("grid", Phrase.text("grid.heading"), elements, false);
  }

  /** What stands in the cells. */
  Phrase cells() {
    return Phrase.text("grid.lead", Phrase.of(control));
  }

  /** The same, and what is marked. */
  private Phrase lead() {
    String marked = showsCheapest() ? "grid.marks" : "grid.marksOne";
    String key = subject.keeps() ? "now." + marked : marked;
    return Phrase.sentences(List.of(cells(), Phrase.text(key)));
  }

  private boolean showsCheapest() {
    return rows.stream()
        .flatMap(row -> row.candidates().stream())
        .anyMatch(each -> comparison.marks(each).contains(Mark.CHEAPEST_THAT_FITS));
  }

  private Optional<Row> neighbour(String key, Optional<Candidate> candidate) {
    return candidate.flatMap(
        other ->
            comparison
                .against(other)
                .map(reason -> Row.of(key, name(key, other), new Phrase.Because(reason))));
  }

  private static Phrase name(String key, Candidate candidate) {
    return new Phrase.Joined(
        List.of(Phrase.text(key), Phrase.plain(candidate.softener().name())), " · ");
  }

  /** Units down by size, dosages across. */
  Table table() {
    List<Table.Column> columns = new ArrayList<>();
    shown.forEach(i -> columns.add(column(dosages.get(i))));
    if (rated) {
      columns.add(new Table.Column("grid.rated", Phrase.text("grid.rated"), Table.Kind.VALUES));
    }
    return new Table(
        "grid", Phrase.text("grid.unit"), columns, rows.stream().map(this::line).toList());
  }

  private static Table.Column column(SaltDosage dosage) {
    String pounds = String.format(Locale.ROOT, "%.2f", dosage.poundsPerCubicFoot());
    return new Table.Column(
        "grid.dosage." + pounds, Phrase.of(Figure.of(dosage)), Table.Kind.VALUES);
  }

  private Table.Line line(Grid.Row row) {
    List<Optional<Candidate>> cells =
        new ArrayList<>(shown.stream().map(row.cells()::get).toList());
    if (rated) {
      cells.add(row.byRating());
    }
    Phrase label =
        new Phrase.Joined(
            List.of(new Phrase.Bed(row.resin()), Phrase.plain(row.softener().name())), " · ");
    return Table.Line.of(
            row.softener().id(),
            label,
            cells.stream().map(cell -> cell.map(this::cell).orElse(Phrase.plain("–"))).toList())
        .marking(
            IntStream.range(0, cells.size())
                .filter(i -> cells.get(i).filter(each -> isMarked(each)).isPresent())
                .boxed()
                .collect(Collectors.toSet()));
  }

  private boolean isMarked(Candidate candidate) {
    return !comparison.marks(candidate).isEmpty();
  }

  private Phrase cell(Candidate candidate) {
    if (!candidate.feasible()) {
      return Phrase.text("grid.breaks");
    }
    Phrase figures = figures(candidate, candidate.design().year().orElseThrow());
    Set<Mark> marks = comparison.marks(candidate);
    if (marks.size() > 1) {
      return Phrase.text("grid.both", figures);
    } else if (marks.contains(Mark.RECOMMENDED)) {
      return Phrase.text("grid.chosen", figures);
    }
    return marks.isEmpty() ? figures : Phrase.text("grid.cheapest", figures);
  }

  private static Phrase figures(Candidate candidate, YearlyUse year) {
    return Phrase.text(
        "grid.cell",
        Phrase.of(Figure.days(year.daysBetween(), 1)),
        Phrase.of(Figure.about(candidate.yearly().saltAndWater())));
  }
}

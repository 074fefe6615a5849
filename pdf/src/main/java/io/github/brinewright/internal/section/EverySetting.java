package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Grid;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.comparison.Mark;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Every cell of the grid in full, for the appendix. */
final class EverySetting {
  private static final Phrase NONE = Phrase.plain("–");

  private final Comparison comparison;

  EverySetting(Comparison comparison) {
    this.comparison = comparison;
  }

  /** The section. */
  Section section() {
    Grid grid = comparison.grid(comparison.closest().setup().control());
    List<Table.Line> lines =
        grid.rows().stream().flatMap(row -> row.candidates().stream()).map(this::line).toList();
    return Section.of(
        "every",
        Phrase.text("every.heading"),
        Paragraph.of(Phrase.text("every.lead", Phrase.of(grid.control()))),
        new Table("every", Phrase.text("grid.unit"), columns(), lines));
  }

  private static List<Table.Column> columns() {
    List<Table.Column> columns = new ArrayList<>();
    Stream.of(
            "every.dosage",
            "every.days",
            "every.salt",
            "every.water",
            "every.cost",
            "every.life",
            "every.hard")
        .forEach(key -> columns.add(new Table.Column(key, Phrase.text(key), Table.Kind.VALUES)));
    columns.add(new Table.Column("every.broken", Phrase.text("every.broken"), Table.Kind.TEXT));
    return columns;
  }

  private Table.Line line(Candidate candidate) {
    Phrase dosage =
        candidate
            .setup()
            .dosage()
            .map(each -> Phrase.of(Figure.of(each)))
            .orElse(Phrase.text("grid.rated"));
    List<Phrase> cells = new ArrayList<>(List.of(dosage));
    cells.addAll(figures(candidate));
    cells.add(new Phrase.Joined(words(candidate), "; "));
    return Table.Line.of(
        candidate.softener().id() + "." + candidate.salt().pounds(),
        Phrase.plain(candidate.softener().name()),
        cells);
  }

  private static List<Phrase> figures(Candidate candidate) {
    return List.of(
        year(candidate, year -> Figure.days(year.daysBetween(), 1)),
        year(candidate, year -> Figure.of(year.salt(), 0)),
        year(candidate, year -> Figure.of(year.water())),
        year(candidate, year -> Figure.about(candidate.yearly().saltAndWater())),
        year(candidate, year -> Figure.about(candidate.life().total())),
        candidate.hardWater().map(hard -> Phrase.of(Figure.of(hard.total(), 0))).orElse(NONE));
  }

  private static Phrase year(Candidate candidate, Function<YearlyUse, Figure> figure) {
    Optional<YearlyUse> year = candidate.design().year();
    return year.map(figure).map(Phrase::of).orElse(NONE);
  }

  /** Marks, then the limits or else the margins that it breaks; or that it keeps all. */
  private List<Phrase> words(Candidate candidate) {
    List<Phrase> words = new ArrayList<>();
    for (Mark mark : comparison.marks(candidate)) {
      words.add(Phrase.of(mark));
    }
    if (!candidate.feasible()) {
      words.add(limit(candidate.broken()));
      return words;
    }
    candidate.marginsBroken().stream().map(EverySetting::margin).forEach(words::add);
    if (candidate.marginsBroken().isEmpty()) {
      words.add(Phrase.text("compare.keeps"));
    }
    return words;
  }

  /** The first in words, the others counted. */
  private static Phrase limit(List<Finding> broken) {
    Phrase first = Phrase.text("every.limit", new Phrase.Found(broken.get(0)));
    int others = broken.size() - 1;
    Phrase more =
        others == 0 ? Phrase.NONE : Phrase.text("every.limits", Phrase.of(Figure.of(others)));
    return Phrase.sentences(List.of(first, more));
  }

  private static Phrase margin(MarginCheck check) {
    return Phrase.text("every.margin", Phrase.of(check.margin()));
  }
}

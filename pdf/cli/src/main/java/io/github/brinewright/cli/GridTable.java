package io.github.brinewright.cli;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Grid;
import io.github.brinewright.comparison.Mark;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Sizes down and salt dosages across, for a terminal: in each cell the days between regenerations,
 * and below them salt and water of a year. {@code R} marks the recommended, {@code C} the cheapest
 * that fits, {@code !} one that breaks a limit, {@code ~} one that breaks a margin.
 */
final class GridTable {
  private static final int NAME = 24;
  private static final int CELL = 12;

  private final Comparison comparison;
  private final Wording words;
  private final List<String> lines = new ArrayList<>();

  private GridTable(Comparison comparison, Wording words) {
    this.comparison = comparison;
    this.words = words;
  }

  /** The grid of each control, that of the recommended one first, as lines of text. */
  static String of(Comparison comparison, Wording words) {
    GridTable table = new GridTable(comparison, words);
    table.lines.add(
        comparison.home().site().id() + ": " + comparison.home().site().contact().name());
    table.lines.addAll(VerdictLines.of(comparison, words));
    if (comparison.verdict().permitsRecommendation()) {
      comparison.grids().forEach(table::grid);
      table.lines.add("");
      table.lines.addAll(ChoiceLines.of(comparison, words));
    }
    return String.join("\n", table.lines) + "\n";
  }

  private void grid(Grid grid) {
    lines.add("");
    lines.add("control: " + words.term(grid.control()));
    lines.add("days between regenerations; salt and water of a year");
    lines.add(
        "R recommended, C cheapest that fits, ! breaks a limit, ~ breaks a margin, - not sold so");
    boolean rated = grid.rows().stream().anyMatch(row -> row.byRating().isPresent());
    List<String> heads =
        new ArrayList<>(grid.dosages().stream().map(Figure::of).map(words::figure).toList());
    if (rated) {
      heads.add("by rating");
    }
    line("", heads);
    grid.rows().forEach(row -> row(row, rated));
  }

  private void row(Grid.Row row, boolean rated) {
    List<Optional<Candidate>> cells = new ArrayList<>(row.cells());
    if (rated) {
      cells.add(row.byRating());
    }
    String name = words.resin(row.resin()) + " " + row.softener().name();
    line(shortened(name), cells.stream().map(cell -> cell.map(this::days).orElse("-")).toList());
    line("", cells.stream().map(cell -> cell.map(this::cost).orElse("")).toList());
  }

  private String days(Candidate candidate) {
    String days =
        candidate.design().year().map(YearlyUse::daysBetween).map(this::number).orElse("-");
    return marks(candidate) + days;
  }

  private String number(double days) {
    return words.number(days, 1) + " d";
  }

  private String cost(Candidate candidate) {
    return candidate.design().feasible() ? words.about(candidate.yearly().saltAndWater()) : "-";
  }

  private String marks(Candidate candidate) {
    Set<Mark> marks = comparison.marks(candidate);
    String mark =
        (marks.contains(Mark.RECOMMENDED) ? "R" : "")
            + (marks.contains(Mark.CHEAPEST_THAT_FITS) ? "C" : "")
            + (!candidate.feasible() ? "!" : candidate.marginsBroken().isEmpty() ? "" : "~");
    return mark.isEmpty() ? "" : mark + " ";
  }

  private static String shortened(String name) {
    return name.length() < NAME ? name : name.substring(0, NAME - 1) + "…";
  }

  private void line(String name, List<String> cells) {
    StringBuilder line = new StringBuilder(String.format("%-" + NAME + "s", name));
    cells.forEach(cell -> line.append(String.format("%" + CELL + "s", cell)));
    lines.add(line.toString().stripTrailing());
  }
}

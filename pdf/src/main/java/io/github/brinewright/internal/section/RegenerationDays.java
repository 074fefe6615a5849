package io.github.brinewright.internal.section;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.simulation.TypicalYear;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The regenerations of one year under each control, day by day; those of the softener that is in
 * the house before them.
 *
 * @param study of the home
 * @param present the softener that is in the house; empty where there is none
 */
record RegenerationDays(HomeStudy study, Optional<PresentColumn> present) {
  Chart chart() {
    List<Chart.Days> rows = rows();
    List<Phrase> inWords = rows.stream().map(RegenerationDays::inWords).toList();
    return new Chart.DayMarks(
        Phrase.text("year.days.alt", Phrase.sentences(inWords)),
        rows,
        Phrase.text("year.days.axis"));
  }

  private List<Chart.Days> rows() {
    return Stream.concat(
            present.map(this::now).stream(), study.controls().keySet().stream().map(this::days))
        .toList();
  }

  private Chart.Days now(PresentColumn now) {
    List<Integer> days = study.typical().regenerations(now.asFound().bed());
    int total = days.stream().mapToInt(Integer::intValue).sum();
    return new Chart.Days(
        PresentColumn.KEY, PresentColumn.name(), days, Phrase.of(Figure.of(total)), false);
  }

  private Chart.Days days(Control control) {
    TypicalYear year = study.typical();
    return new Chart.Days(
        Row.key(control),
        Phrase.of(control),
        Objects.requireNonNull(year.regenerations().get(control)),
        Phrase.of(Figure.of(year.total(control))),
        control == study.recommended());
  }

  private static Phrase said(Chart.Days row) {
    return row.key().equals(PresentColumn.KEY) ? PresentColumn.said() : row.name();
  }

  private static Phrase inWords(Chart.Days row) {
    List<Phrase> months =
        TypicalYear.byMonth(row.events()).stream().map(Figure::of).map(Phrase::of).toList();
    return Phrase.text("year.days.row", said(row), row.total(), new Phrase.Joined(months, ", "));
  }
}

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

/**
 * The regenerations of one year under each control, day by day.
 *
 * @param study of the home
 */
record RegenerationDays(HomeStudy study) {
  Chart chart() {
    List<Control> controls = List.copyOf(study.controls().keySet());
    List<Phrase> inWords = controls.stream().map(this::inWords).toList();
    return new Chart.DayMarks(
        Phrase.text("year.days.alt", Phrase.sentences(inWords)),
        controls.stream().map(this::days).toList(),
        Phrase.text("year.days.axis"));
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

  private Phrase inWords(Control control) {
    List<Phrase> months =
        study.typical().byMonth(control).stream().map(Figure::of).map(Phrase::of).toList();
    return Phrase.text(
        "year.days.row",
        Phrase.of(control),
        Phrase.of(Figure.of(study.typical().total(control))),
        new Phrase.Joined(months, ", "));
  }
}

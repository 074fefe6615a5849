package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Site;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a home asks of a softener.
 *
 * @param home that asks
 */
record HomeRows(HomeLoad home) {
  Rows rows() {
    Site site = home.site();
    return new Rows(
        "home",
        List.of(Phrase.text("home.item"), Phrase.text("home.value"), Phrase.text("home.note")),
        List.of(
            Row.of("home.people", Figure.of(site.household().people()))
                .noting(Phrase.text("home.visit")),
            Row.of("home.design", Figure.of(home.use().design())).noting(designNote()),
            Row.of("home.expected", Figure.of(home.use().expected()))
                .noting(Phrase.text("home.basis", Phrase.of(home.use().expectedBasis()))),
            Row.of("home.load", Figure.of(home.dailyLoad())).noting(Phrase.text("home.load.note")),
            Row.of("home.peak", Figure.of(home.peakFlow())).noting(peakNote()),
            measured("home.pressure", site.supply().pressure().map(Figure::of)),
            measured("home.flow", site.supply().flow().map(Figure::of))));
  }

  /** The method, what passes the bed where that is less, and what other methods say. */
  private Phrase peakNote() {
    List<Phrase> notes = new ArrayList<>(List.of(peakMethod()));
    if (home.peakFlow().exceeds(home.peakThroughBed())) {
      notes.add(Phrase.text("home.peak.bed", Phrase.of(Figure.of(home.peakThroughBed()))));
    }
    home.peak()
        .range()
        .map(
            range ->
                Phrase.text(
                    "home.peak.range",
                    new Phrase.Bare(Figure.of(range.low())),
                    Phrase.of(Figure.of(range.high()))))
        .ifPresent(notes::add);
    return new Phrase.Joined(notes, "; ");
  }

  private Phrase peakMethod() {
    return switch (home.peak().method()) {
      case MEASURED -> Phrase.text("home.measured");
      case FIXTURE_UNITS ->
          Phrase.text("home.peak.fixtures", Phrase.of(Figure.of(home.peak().fixtureUnits(), 1)));
      case BATHROOMS -> Phrase.text("home.peak.note", Phrase.of(bathrooms()));
    };
  }

  private Figure bathrooms() {
    double bathrooms = home.site().household().bathrooms();
    return Figure.of(bathrooms, bathrooms == Math.rint(bathrooms) ? 0 : 1);
  }

  /** Where it is from, and how many of the days at home it covers. */
  private Phrase designNote() {
    return Phrase.text(
        "home.basisCovers",
        Phrase.of(home.use().designBasis()),
        Phrase.of(Figure.percent(home.use().coverage())));
  }

  private static Row measured(String key, Optional<Figure> value) {
    return value
        .map(figure -> Row.of(key, figure).noting(Phrase.text("home.measured")))
        .orElseGet(() -> Row.of(key, Phrase.text("water.notTested")));
  }
}

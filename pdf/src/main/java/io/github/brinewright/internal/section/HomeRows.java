package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.Site;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
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
            use("home.design", home.use().design(), home.use().designBasis()),
            use("home.expected", home.use().expected(), home.use().expectedBasis()),
            Row.of("home.load", Figure.of(home.dailyLoad())).noting(Phrase.text("home.load.note")),
            Row.of("home.peak", Figure.of(home.peakFlow())).noting(peakNote()),
            measured("home.pressure", site.supply().pressure().map(Figure::of)),
            measured("home.flow", site.supply().flow().map(Figure::of))));
  }

  private Phrase peakNote() {
    if (home.peak().byFixtures()) {
      Figure units = Figure.of(home.peak().fixtureUnits(), 1);
      return Phrase.text("home.peak.fixtures", Phrase.of(units));
    }
    double bathrooms = home.site().household().bathrooms();
    int decimals = bathrooms == Math.rint(bathrooms) ? 0 : 1;
    return Phrase.text("home.peak.note", Phrase.of(Figure.of(bathrooms, decimals)));
  }

  private static Row use(String key, Volume daily, UseBasis basis) {
    return Row.of(key, Figure.of(daily)).noting(Phrase.text("home.basis", Phrase.of(basis)));
  }

  private static Row measured(String key, Optional<Figure> value) {
    return value
        .map(figure -> Row.of(key, figure).noting(Phrase.text("home.measured")))
        .orElseGet(() -> Row.of(key, Phrase.text("water.notTested")));
  }
}

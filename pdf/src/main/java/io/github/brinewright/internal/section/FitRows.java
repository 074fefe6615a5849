package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.Site;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Table;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is fitted to a new softener, or what the settings of a present one rest on. */
final class FitRows {
  private final Site site;
  private final List<Row> rows = new ArrayList<>();

  private FitRows(Comparison comparison) {
    site = comparison.home().site();
  }

  /** What is fitted. */
  static Rows of(Comparison comparison, Candidate candidate) {
    FitRows fit = new FitRows(comparison);
    fit.bed(candidate.softener());
    fit.add("settings.backwash", Figure.of(candidate.design().flow().backwash(), 1));
    fit.add("settings.drain", Figure.of(candidate.design().flow().drain().chosen(), 1));
    fit.add("settings.refillFlow", Figure.of(candidate.design().refill().rate(), 2));
    fit.rows.add(Row.of("settings.salt", Phrase.of(candidate.softener().regenerant())));
    candidate
        .softener()
        .brineTank()
        .map(tank -> Figure.of(tank.level(candidate.design().refill().water()), 1))
        .ifPresent(level -> fit.add("settings.level", level));
    return fit.ofHome().rows();
  }

  /** What the settings of a present softener rest on, in one line. */
  static Table found(ControlValues values) {
    List<Phrase> cells =
        List.of(
            new Phrase.Bed(values.softener().resinVolume()),
            Phrase.of(Figure.of(values.cycle().part(CycleStep.Kind.BACKWASH).flow(), 1)),
            Phrase.of(Figure.of(values.refill().rate(), 2)),
            Phrase.of(values.softener().regenerant()));
    return new Table(
        "settings.compare",
        Phrase.NONE,
        Stream.of("settings.resin", "settings.drainNow", "settings.refillNow", "settings.salt")
            .map(key -> new Table.Column(key, Phrase.text(key), Table.Kind.VALUES))
            .toList(),
        List.of(Table.Line.of("settings.compare", cells)));
  }

  /** Where it is blended to, and what a treatment ahead of it leaves, if there is either. */
  static Optional<Rows> ofHome(Comparison comparison) {
    return Optional.of(new FitRows(comparison).ofHome().rows())
        .filter(rows -> !rows.rows().isEmpty());
  }

  private void bed(Softener softener) {
    Phrase label =
        Phrase.text(softener.resinVolumeAssumed() ? "settings.resinAssumed" : "settings.resin");
    rows.add(Row.of("settings.resin", label, new Phrase.Bed(softener.resinVolume())));
  }

  private void add(String key, Figure figure) {
    rows.add(Row.of(key, figure));
  }

  private FitRows ofHome() {
    if (site.target().isPositive()) {
      add("settings.blend", Figure.of(site.target()));
    }
    Phrase ahead = TreatedAs.stated(site);
    if (!ahead.isEmpty()) {
      rows.add(Row.of("settings.ahead", ahead));
    }
    return this;
  }

  private Rows rows() {
    return new Rows(
        "settings.part",
        List.of(Phrase.text("settings.part"), Phrase.text("settings.value")),
        rows);
  }
}

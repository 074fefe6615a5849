package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Table;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.trace.Figure;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The steps of a regeneration as a table: when each begins, its minutes and its water.
 *
 * @param cycle to show
 * @param start the time of day at which it begins; empty where it may be any
 */
record CycleSteps(Cycle cycle, Optional<LocalTime> start) {
  private static final String KEY = "settings.cycle";

  Table table() {
    List<Table.Line> lines = new ArrayList<>();
    for (int i = 0; i < cycle.parts().size(); i++) {
      CycleStep part = cycle.parts().get(i);
      lines.add(
          Table.Line.of(
              Row.key(part.kind()),
              Phrase.of(part.kind()),
              cells(begins(i), part.time(), flow(part.flow()), part.water())));
    }
    lines.add(together());
    lines.add(drawAndRinse());
    return new Table(KEY, Phrase.text("settings.step"), columns(), lines);
  }

  private Phrase begins(int number) {
    return start
        .map(time -> Figure.of(cycle.begins(time).get(number)))
        .or(() -> Optional.of(SetMinutes.figure(cycle.beginsAfter().get(number))))
        .map(Phrase::of)
        .orElseThrow();
  }

  private Table.Line together() {
    return Table.Line.of(
            "settings.together", cells(Phrase.NONE, cycle.time(), Phrase.NONE, cycle.water()))
        .summing();
  }

  /** For controls that have one setting for both. */
  private Table.Line drawAndRinse() {
    return Table.Line.of(
        "settings.drawAndRinse",
        cells(
            begins(CycleStep.Kind.BRINE_DRAW.ordinal()),
            cycle.drawAndRinse(),
            flow(cycle.part(CycleStep.Kind.SLOW_RINSE).flow()),
            cycle.drawAndRinseWater()));
  }

  private static List<Phrase> cells(Phrase begins, Duration time, Phrase flow, Volume water) {
    return List.of(
        begins, Phrase.of(SetMinutes.number(time)), flow, Phrase.of(Figure.of(water, 1)));
  }

  private static Phrase flow(FlowRate flow) {
    return Phrase.of(Figure.of(flow, 2));
  }

  private List<Table.Column> columns() {
    return List.of(
        column(start.isPresent() ? "settings.begins" : "settings.beginsAfter", Table.Kind.VALUES),
        column("settings.minutes", Table.Kind.MAIN),
        column("settings.flow", Table.Kind.VALUES),
        column("settings.water", Table.Kind.VALUES));
  }

  private static Table.Column column(String key, Table.Kind kind) {
    return new Table.Column(key, Phrase.text(key), kind);
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Table;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps of a regeneration as a table.
 *
 * @param cycle to show
 */
record CycleSteps(Cycle cycle) {
  /** Least minutes by which a step must be longer than a whole number to be rounded up. */
  private static final double ROUNDING = 1e-9;

  Table table() {
    List<Table.Line> lines = new ArrayList<>();
    for (CycleStep part : cycle.parts()) {
      lines.add(
          Table.Line.of(
              Row.key(part.kind()),
              Phrase.of(part.kind()),
              List.of(
                  minutes(part),
                  Phrase.of(Figure.of(part.flow(), 2)),
                  Phrase.of(Figure.of(part.water(), 1)))));
    }
    lines.add(
        Table.Line.of(
                "settings.together",
                List.of(
                    Phrase.of(Figure.of(minutesTogether(), 1)),
                    Phrase.NONE,
                    Phrase.of(Figure.of(cycle.water(), 1))))
            .summing());
    return new Table("settings.cycle", Phrase.text("settings.step"), columns(), lines);
  }

  private static List<Table.Column> columns() {
    return List.of(
        column("settings.minutes", Table.Kind.MAIN),
        column("settings.flow", Table.Kind.VALUES),
        column("settings.water", Table.Kind.VALUES));
  }

  private static Table.Column column(String key, Table.Kind kind) {
    return new Table.Column(key, Phrase.text(key), kind);
  }

  private static Phrase minutes(CycleStep part) {
    boolean refill = part.kind() == CycleStep.Kind.BRINE_REFILL;
    return Phrase.of(Figure.of(minutesToSet(part), refill ? 1 : 0));
  }

  /** Whole minutes, rounded up, but for the refill, whose step the control has. */
  private static double minutesToSet(CycleStep part) {
    double exact = Minutes.of(part.time());
    return part.kind() == CycleStep.Kind.BRINE_REFILL ? exact : Math.ceil(exact - ROUNDING);
  }

  private double minutesTogether() {
    return cycle.parts().stream().mapToDouble(CycleSteps::minutesToSet).sum();
  }
}

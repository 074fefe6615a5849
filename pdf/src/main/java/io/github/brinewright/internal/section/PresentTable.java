package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Table;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a year comes to with the softener that is in the house, with that set right, and with the
 * new one, all in the same simulated years; what is advised is marked.
 *
 * @param study of the present softener
 */
record PresentTable(ServiceStudy study) {
  Table table() {
    return new Table(
        "now",
        Phrase.text("compare.row"),
        options().stream().map(this::column).toList(),
        List.of(
            line("every.days", o -> Phrase.of(Figure.days(o.daysBetweenRegenerations(), 1))),
            line("compare.saltYear", o -> Phrase.of(Figure.of(o.salt(), 0))),
            line("compare.waterYear", o -> Phrase.of(Figure.of(o.water()))),
            line("every.hard", o -> Phrase.of(Figure.of(o.hardWater().total(), 0))),
            line("now.cost", o -> Phrase.of(Figure.about(o.cost()))),
            line("compare.price", PresentTable::price)));
  }

  /** The softener as found, and what is advised or offered in its place. */
  private List<ServiceOption> options() {
    return study.options().stream().filter(option -> shown(option.kind())).toList();
  }

  private boolean shown(Kind kind) {
    return switch (kind) {
      case AS_FOUND, REPLACED -> true;
      case SET_RIGHT -> study.advice() != Advice.LEAVE;
      case METERED -> study.advice() == Advice.ADD_METER;
    };
  }

  private Table.Column column(ServiceOption option) {
    String key = Row.key(option.kind());
    Phrase name = unit(option).orElseGet(() -> name(key));
    return option.kind() == study.advice().way()
        ? new Table.Column(key, Phrase.text("now.advised", name), Table.Kind.CHOSEN)
        : new Table.Column(key, name, Table.Kind.VALUES);
  }

  private static Optional<Phrase> unit(ServiceOption option) {
    return option
        .candidate()
        .filter(candidate -> option.kind() == Kind.REPLACED)
        .map(Candidate::softener)
        .map(softener -> Phrase.plain(softener.name()));
  }

  /** What the way of a column is called. */
  static Phrase name(String key) {
    return Phrase.text(key.equals(Row.key(Kind.AS_FOUND)) ? "now.column" : "now." + key);
  }

  private Table.Line line(String key, Function<ServiceOption, Phrase> cell) {
    return Table.Line.of(key, options().stream().map(cell).toList());
  }

  /** Nothing is paid for the softener as it is; where work has no price, that is said. */
  private static Phrase price(ServiceOption option) {
    return option.kind() == Kind.AS_FOUND
        ? PresentColumn.NONE
        : option
            .price()
            .map(price -> Phrase.of(Figure.of(price)))
            .orElseGet(() -> Phrase.text("service.unpriced"));
  }
}

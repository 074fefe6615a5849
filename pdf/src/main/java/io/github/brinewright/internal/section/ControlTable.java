package io.github.brinewright.internal.section;

import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.trace.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is set at a control and, of a softener that is already there, what it is set to now.
 *
 * @param toSet what is to be set
 * @param now as it was found; empty for a new softener
 * @param start the day on which it is set
 */
record ControlTable(ControlValues toSet, Optional<FoundValues> now, LocalDate start) {
  private static final String KEY = "settings.setting";

  /** What is no setting of the softener, but follows from the day or from the rest. */
  private static final Set<String> NO_SETTINGS =
      Set.of("settings.clock", "settings.first", "settings.firstLatest", "settings.refillExact");

  Table table() {
    Map<String, Phrase> values = toSet.values();
    return new Table(
        KEY,
        Phrase.text(KEY),
        columns(),
        ControlValues.KEYS.stream()
            .filter(values::containsKey)
            .map(key -> line(key, values.get(key)))
            .toList());
  }

  /** What is set at a meter, and how several tanks are set. */
  List<Element> more() {
    List<Element> more = new ArrayList<>();
    if (!toSet.meter().isEmpty()) {
      more.add(meter());
    }
    Arrangement arrangement = toSet.softener().arrangement();
    if (arrangement != Arrangement.SINGLE) {
      Phrase takes = Phrase.of(Figure.of(toSet.cycle().time(), 0));
      more.add(Paragraph.quiet(Phrase.text("settings.tanks." + arrangement, takes)));
    }
    return more;
  }

  private Element meter() {
    Table table = new MeterTable(meterColumns()).table();
    return found() ? table : Together.of(table, Paragraph.quiet(Phrase.text("settings.rounding")));
  }

  /** Whether nothing is to be set anew. */
  private boolean found() {
    return toSet instanceof FoundValues;
  }

  private List<Table.Column> columns() {
    if (now.isPresent()) {
      return List.of(
          column("settings.setTo", Table.Kind.MAIN), column("settings.now", Table.Kind.VALUES));
    }
    return List.of(column(found() ? "settings.now" : "settings.value", Table.Kind.MAIN));
  }

  private static Table.Column column(String key, Table.Kind kind) {
    return new Table.Column(key, Phrase.text(key), kind);
  }

  private Table.Line line(String key, Phrase value) {
    List<Phrase> cells = new ArrayList<>(List.of(value));
    now.ifPresent(found -> cells.add(beside(key, value, found.asFound())));
    return Table.Line.of(key, label(key), cells);
  }

  private Phrase label(String key) {
    return key.startsWith("settings.first")
        ? Phrase.text(key, new Phrase.Day(start))
        : Phrase.text(key);
  }

  /** What it is set to now; nothing beside what is no setting. */
  private static Phrase beside(String key, Phrase value, Map<String, Phrase> found) {
    if (NO_SETTINGS.contains(key)) {
      return Phrase.NONE;
    }
    Phrase now = found.getOrDefault(key, ControlValues.NONE);
    return new Phrase.Unlike(now, value, Phrase.text("settings.same"));
  }

  private List<MeterColumn> meterColumns() {
    List<MeterColumn> columns = new ArrayList<>(toSet.meter());
    now.flatMap(found -> found.meter().stream().findFirst())
        .map(found -> new MeterColumn(FoundValues.column(Table.Kind.VALUES), found.values()))
        .ifPresent(columns::add);
    return columns;
  }
}

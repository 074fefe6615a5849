package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.TableCurve;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads resins.csv: one row for each dosage of a resin, by rising dosage. */
final class ResinReader {
  private static final Columns<ResinDraft, ResinColumns.Line> COLUMNS = ResinColumns.COLUMNS;
  private static final String DOSAGE = "dosage_lb_per_ft3";
  private static final String CAPACITY = "capacity_grains_per_ft3";

  private record Line(Row row, ResinDraft draft) {
    TableCurve.Point point() {
      return new TableCurve.Point(
          Objects.requireNonNull(draft.dosage), Objects.requireNonNull(draft.capacity));
    }

    void note(String column, ProblemCode code, Argument... arguments) {
      row.note(column, row.cell(column).orElse(""), code, arguments);
    }
  }

  private ResinReader() {}

  static Map<String, Resin> shipped() {
    Map<String, Resin> resins = new LinkedHashMap<>();
    ShippedResins.all().forEach(resin -> resins.put(resin.id(), resin));
    return resins;
  }

  /** The shipped resins and those of the folder; one of the folder replaces a shipped one. */
  static Map<String, Resin> read(JobFiles files, List<Problem> problems) {
    Map<String, List<Line>> byId = new LinkedHashMap<>();
    for (Row row : Table.read(files, COLUMNS, problems)) {
      ResinDraft draft = new ResinDraft();
      COLUMNS.read(row, draft);
      byId.computeIfAbsent(draft.id, id -> new ArrayList<>()).add(new Line(row, draft));
    }
    Map<String, Resin> resins = shipped();
    byId.values().forEach(lines -> add(lines, resins));
    return resins;
  }

  private static void add(List<Line> lines, Map<String, Resin> resins) {
    if (lines.stream().anyMatch(line -> line.row().broken())) {
      return;
    }
    Line first = lines.get(0);
    check(lines);
    if (lines.stream().noneMatch(line -> line.row().broken())) {
      first
          .row()
          .build(() -> first.draft().build(lines.stream().map(Line::point).toList()))
          .ifPresent(resin -> resins.put(resin.id(), resin));
    }
  }

  /** Says in words what the table would refuse. */
  private static void check(List<Line> lines) {
    if (lines.size() < 2) {
      lines.get(0).note(DOSAGE, ProblemCode.RESIN_ONE_DOSAGE);
    }
    if (efficiency(lines.get(0)).exceeds(CapacityCurve.CHEMICAL_LIMIT)) {
      double limit = Math.floor(CapacityCurve.CHEMICAL_LIMIT.grainsPerPound());
      lines.get(0).note(CAPACITY, ProblemCode.RESIN_ABOVE_LIMIT, Argument.Number.of(limit));
    }
    for (int i = 1; i < lines.size(); i++) {
      checkPair(lines.get(i - 1), lines.get(i));
    }
  }

  private static void checkPair(Line low, Line high) {
    if (!high.point().dosage().exceeds(low.point().dosage())) {
      high.note(DOSAGE, ProblemCode.RESIN_NOT_RISING);
    } else if (!high.point().capacity().exceeds(low.point().capacity())) {
      high.note(CAPACITY, ProblemCode.RESIN_NOT_RISING);
    } else if (efficiency(high).exceeds(efficiency(low))) {
      high.note(CAPACITY, ProblemCode.RESIN_TOO_STEEP);
    }
  }

  private static SaltEfficiency efficiency(Line line) {
    return line.point().capacity().at(line.point().dosage());
  }
}

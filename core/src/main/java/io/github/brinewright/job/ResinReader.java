package io.github.brinewright.job;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.trace.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads resins.csv: one row for each dosage of a resin, by rising dosage. */
final class ResinReader {
  static final TableShape SHAPE =
      new TableShape(
          "resins.csv",
          List.of("resin_id", "dosage_lb_per_ft3", "capacity_grains_per_ft3"),
          List.of("name", "bead_mm", "bead_density_kg_per_m3", "source"));

  private ResinReader() {}

  static Map<String, Resin> shipped() {
    Map<String, Resin> resins = new LinkedHashMap<>();
    ShippedResins.all().forEach(resin -> resins.put(resin.id(), resin));
    return resins;
  }

  /** The shipped resins and those of the folder; one of the folder replaces a shipped one. */
  static Map<String, Resin> read(JobFiles files, List<Problem> problems) {
    Map<String, List<Row>> byId = new LinkedHashMap<>();
    for (Row row : Table.read(files, SHAPE, problems)) {
      byId.computeIfAbsent(row.id("resin_id"), id -> new ArrayList<>()).add(row);
    }
    Map<String, Resin> resins = shipped();
    byId.forEach((id, rows) -> add(id, rows, resins));
    return resins;
  }

  private static void add(String id, List<Row> rows, Map<String, Resin> resins) {
    Row first = rows.get(0);
    List<TableCurve.Point> points = rows.stream().map(ResinReader::point).toList();
    if (rows.stream().anyMatch(Row::broken)) {
      return;
    }
    first
        .build(() -> resin(id, first, new TableCurve(points, source(first))))
        .ifPresent(resin -> resins.put(id, resin));
  }

  private static TableCurve.Point point(Row row) {
    return new TableCurve.Point(
        SaltDosage.ofPoundsPerCubicFoot(row.required("dosage_lb_per_ft3", 1, 30)),
        ResinCapacity.ofGrainsPerCubicFoot(row.required("capacity_grains_per_ft3", 1_000, 60_000)));
  }

  private static Source source(Row row) {
    return Source.given(row.text("source").orElse("the dealer's own resin table"));
  }

  private static Resin resin(String id, Row row, TableCurve curve) {
    return new Resin(
        id,
        row.text("name").orElse(id),
        curve,
        Length.ofMillimetres(row.number("bead_mm", 0.2, 1.5, Resin.USUAL_BEAD.millimetres())),
        Density.ofKilogramsPerCubicMetre(
            row.number(
                "bead_density_kg_per_m3",
                1_050,
                1_600,
                Resin.USUAL_DENSITY.kilogramsPerCubicMetre())));
  }
}

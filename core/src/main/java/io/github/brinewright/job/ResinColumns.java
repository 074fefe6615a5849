package io.github.brinewright.job;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.TableCurve;
import java.util.List;

/** The columns of resins.csv: one row for each dosage of a resin, by rising dosage. */
public final class ResinColumns {
  /** A row: a resin and one point of its table. */
  record Line(Resin resin, TableCurve curve, TableCurve.Point point) {}

  /** All of them. */
  static final Columns<ResinDraft, Line> COLUMNS =
      new Columns<ResinDraft, Line>("resins.csv")
          .always(
              Typed.shortName("resin_id").needed(),
              (draft, id) -> draft.id = id,
              line -> line.resin().id())
          .always(
              Typed.number(
                      "dosage_lb_per_ft3",
                      CapacityCurve.DOSAGE,
                      SaltDosage::ofPoundsPerCubicFoot,
                      SaltDosage::poundsPerCubicFoot)
                  .unit("lb/ft³")
                  .needed(),
              (draft, dosage) -> draft.dosage = dosage,
              line -> line.point().dosage())
          .always(
              Typed.number(
                      "capacity_grains_per_ft3",
                      CapacityCurve.CAPACITY,
                      ResinCapacity::ofGrainsPerCubicFoot,
                      ResinCapacity::grainsPerCubicFoot)
                  .unit("grains/ft³")
                  .needed(),
              (draft, capacity) -> draft.capacity = capacity,
              line -> line.point().capacity())
          .always(
              Typed.text("name"), (draft, name) -> draft.name = name, line -> line.resin().name())
          .always(
              Typed.number("bead_mm", Resin.BEAD_SIZE, Length::ofMillimetres, Length::millimetres)
                  .unit("mm")
                  .usual(Resin.USUAL_BEAD),
              (draft, bead) -> draft.bead = bead,
              line -> line.resin().beadSize())
          .always(
              Typed.number(
                      "bead_density_kg_per_m3",
                      Resin.BEAD_DENSITY,
                      Density::ofKilogramsPerCubicMetre,
                      Density::kilogramsPerCubicMetre)
                  .unit("kg/m³")
                  .usual(Resin.USUAL_DENSITY),
              (draft, density) -> draft.density = density,
              line -> line.resin().beadDensity())
          .always(
              Typed.text("source"),
              (draft, source) -> draft.source = source,
              line -> line.curve().source().citation());

  private ResinColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }
}

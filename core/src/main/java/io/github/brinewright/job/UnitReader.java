package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** Reads units.csv: one row for each unit that the dealer sells. */
final class UnitReader {
  private static final Columns<UnitDraft, Offer> COLUMNS = UnitColumns.COLUMNS;
  private static final String ID = "unit_id";
  private static final Column VOLUME = COLUMNS.column("resin_ft3");
  private static final Column DOSAGES = COLUMNS.column("dosages_lb_per_ft3");
  private static final Column RATED = COLUMNS.column("rated_grains");

  private final Map<String, Resin> resins;
  private final CurrencyUnit currency;

  UnitReader(Map<String, Resin> resins, CurrencyUnit currency) {
    this.resins = resins;
    this.currency = currency;
  }

  List<Offer> read(JobFiles files, List<Problem> problems) {
    int before = problems.size();
    List<Offer> offers = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : Table.read(files, COLUMNS, problems)) {
      offer(row, ids).ifPresent(offers::add);
    }
    if (offers.isEmpty() && problems.size() == before) {
      problems.add(Problem.whole(COLUMNS.file(), ProblemCode.NO_UNIT));
    }
    return offers;
  }

  private Optional<Offer> offer(Row row, Set<String> ids) {
    UnitDraft draft = new UnitDraft();
    COLUMNS.read(row, draft);
    if (!draft.id.isEmpty() && !ids.add(draft.id)) {
      row.note(ID, draft.id, ProblemCode.ID_TWICE);
    }
    checkBed(row);
    checkTanks(row, draft);
    pair(row, "vessel_diameter_in", "vessel_height_in");
    pair(row, "brine_tank_diameter_in", "brine_tank_height_in");
    pair(row, "service_flow_gpm", "peak_flow_gpm");
    row.checkMoney("price", draft.price, currency);
    row.checkMoney("installation_price", draft.installation, currency);
    row.checkMoney("service_price_per_year", draft.service, currency);
    row.checkMoney("meter_extra_price", draft.meterExtra, currency);
    return resin(row, draft).flatMap(resin -> row.build(() -> draft.build(resin, currency)));
  }

  private static void pair(Row row, String first, String second) {
    row.bothOrNone(COLUMNS.column(first), COLUMNS.column(second));
  }

  private static void checkBed(Row row) {
    boolean rated = row.has(RATED.name());
    if (row.isWhole() && rated == row.has(DOSAGES.name())) {
      row.note(
          RATED.name(), "", ProblemCode.CAPACITY_NEEDED, new Argument.ColumnName(DOSAGES.name()));
    } else if (row.isWhole() && !rated && !row.has(VOLUME.name())) {
      row.needed(VOLUME);
    }
  }

  private static void checkTanks(Row row, UnitDraft draft) {
    Bounds<Integer> fitting = draft.arrangement.tanks();
    if (!fitting.holds(draft.tanks())) {
      row.note(
          "tanks",
          String.valueOf(draft.tanks()),
          ProblemCode.TANKS_UNFIT,
          Argument.Number.of(fitting.low()),
          Argument.Number.of(fitting.high()));
    }
    Set<Control> alone = Set.of(Control.METERED_AT_ONCE);
    if (draft.arrangement == Arrangement.TWIN_ALTERNATING
        && !draft.controls.isEmpty()
        && !draft.controls.equals(alone)) {
      row.note(
          "controls",
          row.cell("controls").orElse(""),
          ProblemCode.TWIN_CONTROL,
          new Argument.Words(List.of(Formats.word(Control.METERED_AT_ONCE))));
    }
  }

  private Optional<Resin> resin(Row row, UnitDraft draft) {
    Resin resin = resins.get(draft.resinId);
    if (resin == null) {
      row.unknown("resin_id", draft.resinId, List.copyOf(resins.keySet()));
      return Optional.empty();
    }
    if (draft.rated == null) {
      draft.dosages.stream()
          .filter(dosage -> !resin.curve().covers(dosage))
          .forEach(dosage -> outside(row, dosage, resin.curve()));
    }
    return Optional.of(resin);
  }

  private static void outside(Row row, SaltDosage dosage, CapacityCurve curve) {
    row.note(
        DOSAGES.name(),
        Argument.Number.of(dosage.poundsPerCubicFoot()).value().toPlainString(),
        ProblemCode.DOSAGE_OUTSIDE_TABLE,
        Argument.Number.of(curve.lowest().poundsPerCubicFoot()),
        Argument.Number.of(curve.highest().poundsPerCubicFoot()));
  }
}

package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads units.csv: one row for each unit that the dealer sells. */
final class UnitReader {
  static final TableShape SHAPE =
      new TableShape(
          "units.csv",
          List.of("unit_id", "price"),
          List.of(
              "name",
              "resin_id",
              "resin_ft3",
              "dosages_lb_per_ft3",
              "design_factor",
              "rated_grains",
              "controls",
              "vessel_diameter_in",
              "vessel_height_in",
              "refill_gpm",
              "refill_step_min",
              "service_flow_gpm",
              "peak_flow_gpm",
              "valve_loss_psi",
              "standby_w",
              "salt_storage_lb",
              "drain_flows_gpm",
              "brine_tank_diameter_in",
              "brine_tank_height_in",
              "cycle_plan",
              "regenerant",
              "meter_extra_price",
              "installation_price",
              "service_price_per_year"));

  private final Map<String, Resin> resins;
  private final CurrencyUnit currency;

  UnitReader(Map<String, Resin> resins, CurrencyUnit currency) {
    this.resins = resins;
    this.currency = currency;
  }

  List<Offer> read(JobFiles files, List<Problem> problems) {
    List<Offer> offers = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : Table.read(files, SHAPE, problems)) {
      String id = row.id("unit_id");
      if (!ids.add(id)) {
        row.note("unit_id", id, "stands in an earlier row too; each unit needs its own id");
      }
      offer(row, id).ifPresent(offers::add);
    }
    if (ids.isEmpty() && problems.isEmpty()) {
      problems.add(TextFile.whole(SHAPE.file(), "has no unit; add a row for each, or remove it"));
    }
    return offers;
  }

  private Optional<Offer> offer(Row row, String id) {
    Optional<Softener.Builder> unit = bed(row, id);
    unit.ifPresent(builder -> valve(row, builder));
    Money price = money(row, "price");
    Money installation = money(row, "installation_price");
    Money service = money(row, "service_price_per_year");
    Money meter = money(row, "meter_extra_price");
    if (!row.has("price")) {
      row.note("price", "", "is empty; write the price, or 0 when it is not known");
    }
    return unit.flatMap(
        builder ->
            row.build(
                () ->
                    Offer.of(builder.build(), price)
                        .installation(installation)
                        .yearlyService(service)
                        .meterExtra(meter)
                        .build()));
  }

  private Money money(Row row, String column) {
    BigDecimal amount = row.decimal(column, 0, 1_000_000, "0");
    if (amount.stripTrailingZeros().scale() > currency.getDecimalPlaces()) {
      row.note(column, amount.toPlainString(), "has more decimals than " + currency + " has");
    }
    return Money.of(currency, amount, RoundingMode.HALF_EVEN);
  }

  private Optional<Softener.Builder> bed(Row row, String id) {
    boolean rated = row.has("rated_grains");
    if (rated == row.has("dosages_lb_per_ft3")) {
      row.note(
          "rated_grains",
          "",
          "is needed, or dosages_lb_per_ft3 instead; fill exactly one:"
              + " dosages for a bed of known resin, rated_grains"
              + " when only the rating is known");
      return Optional.empty();
    }
    double volume =
        rated ? row.number("resin_ft3", 0.1, 20, 0) : row.required("resin_ft3", 0.1, 20);
    double grains = rated ? row.required("rated_grains", 1_000, 1_000_000) : 1;
    if (row.broken()) {
      return Optional.empty();
    }
    List<SaltDosage> dosages = dosages(row);
    if (row.broken()) {
      return Optional.empty();
    }
    Volume resin = Volume.ofCubicFeet(volume);
    Softener.Builder unit =
        rated
            ? Softener.withRating(id, HardnessAmount.ofGrains(grains))
            : Softener.withResin(id, resin).dosages(dosages);
    if (rated && volume > 0) {
      unit.resinVolume(resin);
    }
    row.reference("resin_id", resins, ShippedResins.STANDARD_GEL.id()).ifPresent(unit::resin);
    return Optional.of(unit);
  }

  private static List<SaltDosage> dosages(Row row) {
    return row.numbers("dosages_lb_per_ft3", 1, 30).stream()
        .map(pounds -> SaltDosage.ofPoundsPerCubicFoot(pounds.doubleValue()))
        .toList();
  }

  private static void valve(Row row, Softener.Builder unit) {
    row.text("name").ifPresent(unit::name);
    row.ifNumber("design_factor", 0.5, 1, unit::designFactor);
    Set<Control> controls = row.choices("controls", Control.class);
    if (!controls.isEmpty()) {
      unit.controls(controls);
    }
    unit.refill(
        FlowRate.ofGallonsPerMinute(row.number("refill_gpm", 0.05, 5, 0.5)),
        Minutes.toDuration(row.number("refill_step_min", 0.01, 5, 0.1)));
    row.ifNumber("valve_loss_psi", 0, 50, psi -> unit.valveLoss(Pressure.ofPsi(psi)));
    row.ifNumber("standby_w", 0, 100, watts -> unit.standby(Power.ofWatts(watts)));
    row.ifNumber("salt_storage_lb", 1, 5_000, lb -> unit.saltStorage(Mass.ofPounds(lb)));
    row.choice("cycle_plan", CyclePlan.class).ifPresent(unit::plan);
    row.choice("regenerant", Regenerant.class).ifPresent(unit::regenerant);
    pair(row, "vessel_diameter_in", "vessel_height_in", 3, 90)
        .ifPresent(
            inches ->
                unit.vessel(new Vessel(Length.ofInches(inches[0]), Length.ofInches(inches[1]))));
    unit.drainFlows(
        row.numbers("drain_flows_gpm", 0.2, 60).stream()
            .map(gpm -> FlowRate.ofGallonsPerMinute(gpm.doubleValue()))
            .toList());
    pair(row, "brine_tank_diameter_in", "brine_tank_height_in", 8, 60)
        .ifPresent(
            inches ->
                unit.brineTank(
                    new BrineTank(Length.ofInches(inches[0]), Length.ofInches(inches[1]))));
    pair(row, "service_flow_gpm", "peak_flow_gpm", 0.5, 200)
        .ifPresent(
            gpm ->
                unit.serviceFlow(
                    FlowRate.ofGallonsPerMinute(gpm[0]), FlowRate.ofGallonsPerMinute(gpm[1])));
  }

  /** Two columns of which either both are filled or none. */
  private static Optional<double[]> pair(
      Row row, String first, String second, double low, double high) {
    if (!row.has(first) && !row.has(second)) {
      return Optional.empty();
    }
    return Optional.of(
        new double[] {row.required(first, low, high), row.required(second, low, high)});
  }
}

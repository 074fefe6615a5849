package io.github.brinewright.chance;

import io.github.brinewright.chance.Chance.Cells;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import java.util.List;
import java.util.stream.IntStream;

/** A dealer by chance: what is sold, in which currency and to what margins. */
final class RandomPrices {
  static final int YEN_A_DOLLAR = 150;

  private final Chance chance;
  private final boolean yen;

  RandomPrices(Chance chance) {
    this.chance = chance;
    yen = chance.in(0.3);
  }

  boolean inYen() {
    return yen;
  }

  String dealer() {
    Cells keys =
        new Cells()
            .put("name", "Chance Water (invented)")
            .put("currency", yen ? "JPY" : "USD")
            .put("locale", chance.pick("en-US", "es-US", "fr-CA", "fr-FR"))
            .put("units", chance.pick("us", "metric"))
            .put("paper", chance.pick("letter", "a4"))
            .put("tax_percent", chance.pick("0", "6.25", "10"))
            .put("years", chance.whole(1, 30))
            .put("discount_percent", chance.number(-2, 10, 1));
    maybe(keys, 0.3, "shortest_interval_days", chance.number(1, 4, 1));
    maybe(keys, 0.3, "lowest_pressure_psi", chance.number(10, 35, 0));
    maybe(keys, 0.3, "design_use_percent", chance.number(70, 99, 1));
    maybe(keys, 0.5, "reserve_risk_percent", chance.number(0.5, 25, 1));
    return keys.properties();
  }

  private static void maybe(Cells cells, boolean so, String column, Object cell) {
    if (so) {
      cells.put(column, cell);
    }
  }

  private void maybe(Cells cells, double share, String column, Object cell) {
    maybe(cells, chance.in(share), column, cell);
  }

  private String price(double dollars) {
    return yen
        ? String.valueOf(Math.round(dollars * YEN_A_DOLLAR))
        : String.valueOf(Math.round(dollars));
  }

  private String rate(double low, double high) {
    return chance.number(low * (yen ? 100 : 1), high * (yen ? 100 : 1), 3);
  }

  String tariffs() {
    Cells row = new Cells().put("tariff_id", "T");
    if (chance.in(0.5)) {
      row.put("water_price_per_1000_gal", rate(0, 5)).put("water_steps_gal_per_month", "");
    } else {
      row.put("water_price_per_1000_gal", rate(2, 5) + " " + rate(2, 9))
          .put("water_steps_gal_per_month", chance.whole(1_000, 9_000));
    }
    row.put("sewer_price_per_1000_gal", chance.in(0.3) ? "0" : rate(1, 9))
        .put("salt_price_per_lb", rate(0.08, 0.6))
        .put("potassium_price_per_lb", rate(0.4, 1.5))
        .put("salt_rise_percent", chance.number(-2, 8, 1))
        .put("water_rise_percent", chance.number(-2, 8, 1));
    return Cells.csv(List.of(row));
  }

  String units() {
    return Cells.csv(IntStream.rangeClosed(1, chance.whole(1, 7)).mapToObj(this::unit).toList());
  }

  private Cells unit(int number) {
    Cells row =
        new Cells()
            .put("unit_id", "U" + number)
            .put("price", price(chance.between(300, 4_000)))
            .put("installation_price", price(chance.between(0, 800)))
            .put("service_price_per_year", price(chance.between(0, 80)))
            .put("meter_extra_price", price(chance.between(0, 300)));
    bed(row);
    valve(row);
    maybe(row, 0.2, "regenerant", "potassium_chloride");
    maybe(row, 0.3, "valve_loss_psi", chance.number(0, 12, 0));
    maybe(row, 0.3, "drain_flows_gpm", "1.5 2.0 2.4 3.0 4.5 7.0");
    maybe(row, 0.3, "refill_gpm", chance.number(0.1, 1.5, 2));
    maybe(row, 0.3, "refill_step_min", chance.pick("0.1", "1", "2"));
    maybe(row, 0.3, "cycle_plan", chance.pick("everyday", "water_saving", "iron_bearing"));
    if (chance.in(0.4)) {
      row.put("brine_tank_diameter_in", chance.whole(14, 30))
          .put("brine_tank_height_in", chance.whole(28, 48));
    }
    return row;
  }

  private void bed(Cells row) {
    if (chance.in(0.2)) {
      row.put("rated_grains", chance.whole(12, 96) * 1_000);
      maybe(row, 0.4, "resin_ft3", chance.number(0.5, 4, 2));
      return;
    }
    row.put("resin_ft3", chance.number(0.5, 6, 2))
        .put("dosages_lb_per_ft3", chance.pick("6", "5 7.5 10", "5 8 12", "6 9 11"))
        .put("resin_id", chance.pick("standard-gel", "fine-mesh", "general-purpose"));
    maybe(row, 0.2, "design_factor", chance.number(0.6, 1, 2));
    maybe(row, 0.2, "certified_grains_per_lb", chance.number(2_500, 5_000, 0));
  }

  private void valve(Cells row) {
    double tanks = chance.between(0, 1);
    if (tanks < 0.2) {
      row.put("arrangement", "twin_alternating").put("controls", "metered_at_once");
    } else if (tanks < 0.35) {
      row.put("arrangement", "parallel").put("tanks", chance.whole(2, 4));
    } else {
      row.put("arrangement", "single");
    }
    if (tanks >= 0.2) {
      row.put(
          "controls",
          chance.pick(
              "",
              "clock",
              "clock metered_at_night",
              "weekdays",
              "weekdays clock metered_at_night",
              "metered_at_night metered_at_once",
              "clock metered_at_night metered_at_once"));
    }
  }

  /** The usual margins, or others for some of them. */
  Margins margins() {
    if (chance.in(0.5)) {
      return Margins.USUAL;
    }
    return Margins.builder()
        .meanDays(chance.between(1, 8))
        .designDays(chance.between(1, 5))
        .twinDays(chance.between(0.5, 3))
        .peakShare(chance.between(0.5, 1.5))
        .serviceLoading(FlowVelocity.ofGallonsPerMinutePerSquareFoot(chance.between(8, 20)))
        .pressureLeft(Pressure.ofPsi(chance.between(15, 50)))
        .runOutBeyondRisk(chance.between(0.001, 0.1))
        .hardWaterMean(chance.between(0.001, 0.03))
        .hardWaterHigh(chance.between(0.001, 0.05))
        .leanDosage(SaltDosage.ofPoundsPerCubicFoot(chance.between(3, 10)))
        .build();
  }
}

package io.github.brinewright.chance;

import io.github.brinewright.chance.Chance.Cells;

/** The softener that a home has already, by chance, with whatever of it was found. */
final class RandomPresent {
  private static final long APART = 1_000_000;

  private final Chance chance;
  private final Cells row;

  private RandomPresent(Chance chance, Cells row) {
    this.chance = chance;
    this.row = row;
  }

  /** In every other case, by a chance of its own, so that the rest of the case stays as it is. */
  static void add(Cells row, int number) {
    if (number % 2 == 1) {
      RandomPresent present = new RandomPresent(new Chance(APART + number), row);
      present.control();
      present.bed();
      present.salt();
      present.rest();
    }
  }

  /** What a dealer asks for a meter and a visit, or not. */
  static String prices(int number, boolean yen) {
    Chance chance = new Chance(2 * APART + number);
    Cells keys = new Cells();
    int each = yen ? RandomPrices.YEN_A_DOLLAR : 1;
    if (chance.in(0.7)) {
      keys.put("meter_retrofit_price", chance.whole(0, 600) * each);
    }
    if (chance.in(0.7)) {
      keys.put("service_visit_price", chance.whole(0, 200) * each);
    }
    return keys.properties();
  }

  private void control() {
    String control =
        chance.pick("clock", "clock", "weekdays", "metered_at_night", "metered_at_once");
    row.put("present_control", control);
    if (control.equals("clock")) {
      row.put("present_days", chance.whole(1, chance.in(0.1) ? 99 : 14));
    } else if (control.equals("weekdays")) {
      row.put("present_weekdays", chance.pick("mon thu", "tue", "mon wed fri", "sat sun"));
    } else {
      meter();
    }
  }

  private void meter() {
    if (chance.in(0.6)) {
      row.put("present_volume_gal", chance.whole(100, 3_000));
    } else {
      row.put("present_set_hardness_gpg", chance.whole(4, 60));
      maybe(0.6, "present_set_capacity_grains", chance.whole(8, 60) * 1_000);
    }
    maybe(0.2, "present_reserve_gal", chance.whole(0, 90));
    maybe(0.3, "present_days", chance.whole(5, 30));
  }

  private void bed() {
    switch (chance.whole(0, 2)) {
      case 0 -> row.put("present_rated_grains", chance.whole(12, 100) * 1_000);
      case 1 -> row.put("present_resin_ft3", chance.number(0.4, 4, 2));
      default ->
          row.put("present_vessel_diameter_in", chance.whole(7, 16))
              .put("present_vessel_height_in", chance.whole(35, 65));
    }
    maybe(0.6, "present_age_years", chance.whole(0, 25));
  }

  private void salt() {
    switch (chance.whole(0, 4)) {
      case 0 -> row.put("present_dosage_lb_per_ft3", chance.number(2, 20, 1));
      case 1 -> row.put("present_salt_lb", chance.number(3, 40, 1));
      case 2 -> {
        row.put("present_refill_min", chance.whole(2, 30));
        maybe(0.6, "present_refill_gpm", chance.number(0.2, 1, 2));
      }
      default -> maybe(0.5, "present_salt_bought_lb_per_year", chance.whole(80, 3_000));
    }
  }

  private void rest() {
    maybe(0.4, "present_regeneration_hour", chance.whole(0, 23));
    maybe(0.2, "present_regenerant", "potassium_chloride");
    maybe(0.2, "present_hardness_after_gpg", chance.number(0, 12, 1));
  }

  private void maybe(double share, String column, Object cell) {
    if (chance.in(share)) {
      row.put(column, cell);
    }
  }
}

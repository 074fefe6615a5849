package io.github.brinewright.chance;

import io.github.brinewright.chance.Chance.Cells;

/** A home by chance: its water, people and supply, and what the visit left open. */
final class RandomHome {
  private final Chance chance;
  private final Cells row = new Cells();
  private final boolean well;
  private final double hardness;

  private RandomHome(Chance chance) {
    this.chance = chance;
    well = chance.in(0.4);
    hardness = chance.in(0.1) ? chance.between(0.5, 5) : chance.between(5, 50);
  }

  static Cells row(Chance chance) {
    RandomHome home = new RandomHome(chance);
    home.water();
    home.metals();
    home.treatment();
    home.people();
    home.days();
    home.supply();
    return home.row;
  }

  private void water() {
    row.put("site_id", "R1")
        .put("customer", "the household of chance")
        .put("hardness_gpg", String.format(java.util.Locale.ROOT, "%.2f", hardness))
        .put("water_source", well ? "private_well" : "public_supply");
    maybe(
        0.5, "hardness_method", chance.pick("laboratory", "drop_test", "strip", "utility_average"));
    maybe(0.8, "ph", chance.number(chance.in(0.1) ? 4.5 : 6.2, 9, 1));
    maybe(0.6, "tds_mg_per_l", chance.number(100, 1_500, 0));
    maybe(0.3, "alkalinity_mg_per_l", chance.number(0, 400, 0));
    maybe(0.2, "carbon_dioxide_mg_per_l", chance.number(0, 60, 0));
    maybe(0.2, "sodium_mg_per_l", chance.number(0, 200, 0));
    maybe(0.2, "chloride_mg_per_l", chance.number(0, 300, 0));
    maybe(0.4, "nitrate_mg_per_l", lab(0, 15));
    maybe(0.4, "free_chlorine_mg_per_l", lab(0, 3));
    maybe(0.2, "chloramine_mg_per_l", lab(0, 3));
    maybe(0.2, "hydrogen_sulfide_mg_per_l", lab(0, 1));
    maybe(0.2, "turbidity_ntu", chance.number(0, 8, 1));
    maybe(0.7, "temperature_f", chance.number(36, 75, 0));
    maybe(0.6, "bacteria", living());
    maybe(0.5, "e_coli", living());
    maybe(0.4, "iron_bacteria", living());
  }

  private String living() {
    return chance.in(0.8) ? "none_found" : "found";
  }

  private String lab(double low, double high) {
    return chance.in(0.2)
        ? chance.pick("ND", "not detected", "<0.05")
        : chance.number(low, high, 2);
  }

  private void metals() {
    if (chance.in(0.7)) {
      double iron = chance.between(0, chance.in(0.2) ? 9 : 0.6);
      row.put("iron_mg_per_l", String.format(java.util.Locale.ROOT, "%.3f", iron));
      maybe(0.5, "dissolved_iron_mg_per_l", chance.number(0, iron + 1e-6, 3));
      maybe(0.4, "iron_clear_at_tap", chance.pick("yes", "no"));
    }
    maybe(0.6, "manganese_mg_per_l", lab(0, 0.5));
  }

  private void treatment() {
    if (!well || chance.in(0.5)) {
      return;
    }
    row.put("treated_hardness_gpg", chance.number(4, hardness + 5, 1));
    maybe(0.8, "treated_iron_mg_per_l", lab(0, 0.4));
    maybe(0.6, "treated_manganese_mg_per_l", lab(0, 0.06));
    maybe(0.7, "treated_ph", chance.number(6.5, 8.5, 1));
  }

  private void people() {
    row.put("people", chance.in(0.08) ? chance.whole(9, 20) : chance.whole(1, 8))
        .put("bathrooms", chance.pick("1", "1.5", "2", "2.5", "3", "4.5"));
    maybe(0.2, "use_gal_per_person_day", chance.number(45, 110, 0));
    if (chance.in(0.4)) {
      int days = chance.whole(25, 100);
      row.put("bill_gal", (int) (days * chance.between(35, 450))).put("bill_days", days);
    }
    maybe(0.15, "softened", "hot_water");
    if (hardness > 4) {
      maybe(0.2, "target_hardness_gpg", chance.number(0, 3.9, 1));
    }
    maybe(0.2, "softer_wanted", "yes");
    maybe(
        0.3,
        "fixtures",
        chance.pick(
            "2 shower 3 lavatory 2 water_closet 1 dishwasher",
            "2 full_bathroom 1 half_bathroom 1 kitchen 1 laundry"));
  }

  /** Within the stretches that the forecast's accuracy is stated for. */
  private void days() {
    maybe(0.3, "away_days_per_year", chance.whole(1, 60));
    if (chance.in(0.3)) {
      row.put("guests", chance.whole(1, 5)).put("guest_days_per_year", chance.whole(1, 40));
    }
  }

  private void supply() {
    maybe(0.8, "pressure_psi", chance.number(25, 90, 0));
    maybe(0.2, "flowing_pressure_psi", chance.number(20, 70, 0));
    maybe(0.7, "flow_gpm", chance.number(4, 25, 1));
    maybe(0.2, "peak_gpm", chance.number(4, 20, 1));
    maybe(0.3, "brine_tank_temperature_f", chance.number(36, 95, 0));
    maybe(0.3, "place", chance.pick("US", "US-CA", "CA", "CA-ON"));
    row.put("tariff_id", "T");
  }

  private void maybe(double share, String column, Object cell) {
    if (chance.in(share)) {
      row.put(column, cell);
    }
  }
}

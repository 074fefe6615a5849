package io.github.brinewright.chance;

import io.github.brinewright.chance.Chance.Cells;
import java.util.ArrayList;
import java.util.List;

/** What a dealer sells beside a unit, by chance: treatments with their effect, and other things. */
final class RandomItems {
  /** Keeps the draws of homes and prices as they are without items. */
  private static final int OTHER_SEED = 1_000_003;

  private final Chance chance;
  private final boolean yen;

  private RandomItems(Chance chance, boolean yen) {
    this.chance = chance;
    this.yen = yen;
  }

  /** The text of items.csv. */
  static String of(int number, boolean yen) {
    RandomItems items = new RandomItems(new Chance(OTHER_SEED + number), yen);
    List<Cells> rows = new ArrayList<>();
    rows.add(items.item("leak-alarm", "accessory").put("need", "offered"));
    if (items.chance.in(0.7)) {
      rows.add(items.neutralizer());
    }
    if (items.chance.in(0.8)) {
      rows.add(items.filter());
    }
    if (items.chance.in(0.4)) {
      rows.add(items.sediment());
    }
    if (items.chance.in(0.4)) {
      rows.add(items.carbon());
    }
    if (items.chance.in(0.3)) {
      rows.add(
          new Cells()
              .put("item_id", "spring")
              .put("kind", "discount")
              .put("percent", items.chance.whole(0, 100))
              .put("need", "included"));
    }
    return Cells.csv(rows);
  }

  private Cells item(String id, String kind) {
    int dollars = chance.whole(0, 2_000);
    Cells row = new Cells().put("item_id", id).put("kind", kind);
    row.put("price", yen ? dollars * RandomPrices.YEN_A_DOLLAR : dollars);
    if (chance.in(0.5)) {
      row.put("upkeep_price_per_year", chance.whole(0, 90) * (yen ? 100 : 1));
    }
    if (chance.in(0.4)) {
      row.put("renewed_every_years", chance.whole(1, 30));
    }
    return row;
  }

  private Cells treatment(String id, String position, String requiredBy) {
    Cells row = item(id, "treatment").put("treatment_position", position);
    if (chance.in(0.2)) {
      row.put("need", "included");
    } else {
      row.put("required_by", requiredBy);
    }
    if (chance.in(0.5)) {
      row.put("treated_flow_gpm", chance.number(4, 25, 1));
    }
    if (chance.in(0.6)) {
      row.put("pressure_loss_psi", chance.number(0, 15, 1));
    }
    if (chance.in(0.6)) {
      row.put("backwash_gal", chance.whole(20, 200))
          .put("backwash_every_days", chance.whole(1, 14));
    }
    return row;
  }

  private Cells neutralizer() {
    return treatment("lift", "neutralizer", "ph-too-low")
        .put("neutralizer_mineral", chance.pick("calcite", "magnesia"))
        .put("ph_after", chance.number(6.5, 8.5, 1));
  }

  private Cells filter() {
    Cells row =
        treatment("filter", "metals", "iron-above-bed iron-particles hydrogen-sulfide-in-water")
            .put("iron_taken_percent", chance.whole(0, 100))
            .put("manganese_taken_percent", chance.whole(0, 100))
            .put("hydrogen_sulfide_taken_percent", chance.whole(50, 100));
    if (chance.in(0.6)) {
      row.put("iron_most_mg_per_l", chance.number(1, 25, 1));
    }
    if (chance.in(0.5)) {
      row.put("least_ph", chance.number(6, 7.5, 1));
    }
    return row;
  }

  private Cells sediment() {
    return treatment("sieve", "sediment", "turbidity-high")
        .put("turbidity_taken_percent", chance.whole(0, 100));
  }

  private Cells carbon() {
    return treatment("carbon", "carbon", "chlorine-wears-resin")
        .put("free_chlorine_taken_percent", chance.whole(50, 100))
        .put("chloramine_taken_percent", chance.whole(0, 60));
  }
}

package io.github.brinewright.job;

import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Escalation;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** Reads tariffs.csv: one row for each tariff; rates in steps are lists separated by spaces. */
final class TariffReader {
  static final TableShape SHAPE =
      new TableShape(
          "tariffs.csv",
          List.of("tariff_id", "water_price_per_1000_gal"),
          List.of(
              "name",
              "water_steps_gal_per_month",
              "sewer_price_per_1000_gal",
              "sewer_steps_gal_per_month",
              "salt_price_per_lb",
              "potassium_price_per_lb",
              "electricity_price_per_kwh",
              "salt_rise_percent",
              "water_rise_percent"));

  private static final double HIGHEST_PRICE = 1_000;

  private TariffReader() {}

  static Map<String, Tariff> read(JobFiles files, CurrencyUnit currency, List<Problem> problems) {
    Map<String, Tariff> tariffs = new LinkedHashMap<>();
    int before = problems.size();
    for (Row row : Table.read(files, SHAPE, problems)) {
      String id = row.id("tariff_id");
      if (tariffs.containsKey(id)) {
        row.note("tariff_id", id, "stands in an earlier row too; each tariff needs its own id");
      }
      tariff(row, id, currency).ifPresent(tariff -> tariffs.put(id, tariff));
    }
    if (tariffs.isEmpty() && problems.size() == before) {
      problems.add(TextFile.whole(SHAPE.file(), "has no tariff; add a row for each, or remove it"));
    }
    return tariffs;
  }

  private static java.util.Optional<Tariff> tariff(Row row, String id, CurrencyUnit currency) {
    Tariff usual = Tariff.placeholder(currency);
    BlockRate water = rate(row, "water", currency);
    BlockRate sewer = rate(row, "sewer", currency);
    BigMoney salt = price(row, "salt_price_per_lb", usual.salt());
    BigMoney potassium = price(row, "potassium_price_per_lb", usual.potassium());
    BigMoney electricity = price(row, "electricity_price_per_kwh", usual.perKilowattHour());
    String name = row.text("name").orElse(id);
    Escalation rise =
        new Escalation(
            row.number("salt_rise_percent", -5, 20, 100 * Escalation.USUAL.salt()) / 100,
            row.number("water_rise_percent", -5, 20, 100 * Escalation.USUAL.water()) / 100);
    return row.build(
        () ->
            Tariff.builder(id, currency)
                .name(name)
                .water(water)
                .sewer(sewer)
                .salt(salt)
                .potassium(potassium)
                .perKilowattHour(electricity)
                .escalation(rise)
                .build());
  }

  private static BigMoney price(Row row, String column, BigMoney usual) {
    return BigMoney.of(
        usual.getCurrencyUnit(),
        row.decimal(column, 0, HIGHEST_PRICE, usual.getAmount().toPlainString()));
  }

  private static BlockRate rate(Row row, String kind, CurrencyUnit currency) {
    String priceColumn = kind + "_price_per_1000_gal";
    String stepColumn = kind + "_steps_gal_per_month";
    List<BigDecimal> prices = row.numbers(priceColumn, 0, HIGHEST_PRICE);
    List<BigDecimal> steps = row.numbers(stepColumn, 1, 1_000_000);
    BlockRate none = BlockRate.flat(BigMoney.zero(currency));
    if (prices.isEmpty()) {
      return none;
    }
    if (steps.size() != prices.size() - 1) {
      row.note(
          stepColumn,
          "",
          prices.size() + " prices need " + (prices.size() - 1) + " steps between them");
      return none;
    }
    List<BlockRate.Block> blocks = new ArrayList<>();
    for (int i = 0; i < prices.size(); i++) {
      Volume upTo =
          i < steps.size() ? Volume.ofGallons(steps.get(i).doubleValue()) : BlockRate.UNLIMITED;
      blocks.add(new BlockRate.Block(upTo, BigMoney.of(currency, prices.get(i))));
    }
    return row.build(() -> new BlockRate(blocks)).orElse(none);
  }
}

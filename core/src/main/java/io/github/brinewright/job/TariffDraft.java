package io.github.brinewright.job;

import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Escalation;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** What a row of tariffs.csv says, column by column, until the tariff can be built from it. */
final class TariffDraft {
  String id = "";
  String name = "";
  List<BigDecimal> waterPrices = List.of();
  List<BigDecimal> sewerPrices = List.of();
  List<Volume> waterSteps = List.of();
  List<Volume> sewerSteps = List.of();
  BigDecimal salt = BigDecimal.ZERO;
  BigDecimal potassium = BigDecimal.ZERO;
  BigDecimal electricity = BigDecimal.ZERO;
  double saltRise;
  double waterRise;

  Tariff build(CurrencyUnit currency) {
    return Tariff.builder(id, currency)
        .name(name.isEmpty() ? id : name)
        .water(rate(waterPrices, waterSteps, currency))
        .sewer(rate(sewerPrices, sewerSteps, currency))
        .salt(BigMoney.of(currency, salt))
        .potassium(BigMoney.of(currency, potassium))
        .perKilowattHour(BigMoney.of(currency, electricity))
        .escalation(new Escalation(saltRise, waterRise))
        .build();
  }

  private static BlockRate rate(
      List<BigDecimal> prices, List<Volume> steps, CurrencyUnit currency) {
    List<BlockRate.Block> blocks = new ArrayList<>();
    for (int i = 0; i < prices.size(); i++) {
      Volume upTo = i < steps.size() ? steps.get(i) : BlockRate.UNLIMITED;
      blocks.add(new BlockRate.Block(upTo, BigMoney.of(currency, prices.get(i))));
    }
    return new BlockRate(blocks);
  }
}

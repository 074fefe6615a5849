package io.github.brinewright.cost;

import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.treatment.Treatment;
import java.util.List;
import org.joda.money.Money;

/**
 * Water that treatments send to the drain. Formula: volume of a year × prices of water and sewer at
 * the use of the home, each rounded once. Source: product of the figures named.
 */
final class TreatmentWater {
  private TreatmentWater() {}

  /**
   * {@return what the backwash water of all items costs in a year}
   *
   * @param items of a quote
   * @param tariff in the currency of the items
   * @param homeUse water that the home uses a year
   */
  static Money ofYear(List<Item> items, Tariff tariff, Volume homeUse) {
    Money nothing = Money.zero(tariff.salt().getCurrencyUnit());
    RunningYear year =
        new RunningYear(
            Regenerant.SODIUM_CHLORIDE,
            Mass.ofPounds(0),
            drain(items),
            Energy.ofKilowattHours(0),
            nothing);
    var lines = year.lines(tariff, homeUse);
    return Money.total(lines.get(CostKind.WATER), lines.get(CostKind.SEWER));
  }

  /**
   * {@return the backwash water of all items in a year}
   *
   * @param items of a quote
   */
  static Volume drain(List<Item> items) {
    return items.stream()
        .flatMap(
            item ->
                item
                    .treatment()
                    .map(Treatment::drainOfYear)
                    .map(each -> each.times(item.quantity()))
                    .stream())
        .reduce(Volume.ofGallons(0), Volume::plus);
  }
}

package io.github.brinewright.cost;

import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a softener takes in a year, to be priced. Source: product of amount and price.
 *
 * @param regenerant the kind of its salt
 * @param salt of the year; zero or more
 * @param water of its regenerations; zero or more
 * @param electricity of its control; zero or more
 * @param service what its service costs; zero or more
 */
public record RunningYear(
    Regenerant regenerant, Mass salt, Volume water, Energy electricity, Money service) {

  /**
   * @param regenerant the kind of its salt
   * @param salt of the year
   * @param water of its regenerations
   * @param electricity of its control
   * @param service what its service costs
   * @throws IllegalArgumentException when one of them is negative, or the service above 10^12
   */
  public RunningYear {
    Require.notNegative("salt of a year", salt);
    Require.notNegative("water of a year", water);
    Require.notNegative("electricity of a year", electricity);
    Prices.require("service of a year", service, service.getCurrencyUnit());
  }

  /**
   * {@return each line to the last digit, at today's prices}
   *
   * @param tariff in the currency of the service
   * @param homeUse water that the home uses a year, on which the block of a rate depends
   */
  Map<CostKind, BigMoney> exact(Tariff tariff, Volume homeUse) {
    Map<CostKind, BigMoney> exact = new EnumMap<>(CostKind.class);
    exact.put(CostKind.SALT, tariff.saltCost(regenerant, salt));
    exact.put(CostKind.WATER, tariff.waterCost(homeUse, water));
    exact.put(CostKind.SEWER, tariff.sewerCost(homeUse, water));
    exact.put(CostKind.ELECTRICITY, tariff.energyCost(electricity));
    exact.put(CostKind.SERVICE, service.toBigMoney());
    return exact;
  }

  /**
   * {@return each line, rounded once to the smallest unit of the currency}
   *
   * @param tariff in the currency of the service
   * @param homeUse water that the home uses a year
   */
  public Map<CostKind, Money> lines(Tariff tariff, Volume homeUse) {
    Map<CostKind, Money> lines = new EnumMap<>(CostKind.class);
    exact(tariff, homeUse)
        .forEach((kind, cost) -> lines.put(kind, cost.toMoney(RoundingMode.HALF_EVEN)));
    return Collections.unmodifiableMap(lines);
  }
}

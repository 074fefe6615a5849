package io.github.brinewright.cost;

import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Prices at one address.
 *
 * @param id short name within a job
 * @param name on paper
 * @param water rate of the water
 * @param sewer rate of the sewer; zero prices with a septic system
 * @param salt price of a pound of sodium chloride
 * @param potassium price of a pound of potassium chloride
 * @param perKilowattHour price of electricity
 * @param escalation yearly rise of these prices
 */
public record Tariff(
    String id,
    String name,
    BlockRate water,
    BlockRate sewer,
    BigMoney salt,
    BigMoney potassium,
    BigMoney perKilowattHour,
    Escalation escalation) {
  private static final int QUANTITY_DECIMALS = 4;

  /** Round figures for a first look where no tariff was entered; not a published price. */
  public static Tariff placeholder(CurrencyUnit currency) {
    return new Tariff(
        "placeholder",
        "round figures, no tariff entered",
        BlockRate.flat(price(currency, "6.00")),
        BlockRate.flat(price(currency, "8.00")),
        price(currency, "0.20"),
        price(currency, "0.70"),
        price(currency, "0.16"),
        Escalation.USUAL);
  }

  private static BigMoney price(CurrencyUnit currency, String amount) {
    return BigMoney.of(currency, new BigDecimal(amount));
  }

  /** What a mass of salt costs, unrounded. */
  public BigMoney saltCost(Regenerant regenerant, Mass mass) {
    return times(perPound(regenerant), mass.pounds());
  }

  /**
   * What more water costs a home in a year, at the steps of the rate it falls in; unrounded.
   *
   * @param yearlyUse of the home without it
   * @param more of a year
   */
  public BigMoney waterCost(Volume yearlyUse, Volume more) {
    return water.yearlyCostOf(yearlyUse, more);
  }

  /** The same for the sewer. */
  public BigMoney sewerCost(Volume yearlyUse, Volume more) {
    return sewer.yearlyCostOf(yearlyUse, more);
  }

  /** What energy costs, unrounded. */
  public BigMoney energyCost(Energy energy) {
    return times(perKilowattHour, energy.kilowattHours());
  }

  /** Salt, water and sewer of a year together, to the cent. */
  public Money saltAndWater(Regenerant regenerant, Mass mass, Volume yearlyUse, Volume more) {
    return saltCost(regenerant, mass)
        .plus(waterCost(yearlyUse, more))
        .plus(sewerCost(yearlyUse, more))
        .toMoney(RoundingMode.HALF_EVEN);
  }

  private static BigMoney times(BigMoney price, double quantity) {
    return price.multipliedBy(
        BigDecimal.valueOf(quantity).setScale(QUANTITY_DECIMALS, RoundingMode.HALF_EVEN));
  }

  /** The same with salt at another price, as a multiple. */
  public Tariff withSaltTimes(BigDecimal factor) {
    return new Tariff(
        id,
        name,
        water,
        sewer,
        salt.multipliedBy(factor),
        potassium.multipliedBy(factor),
        perKilowattHour,
        escalation);
  }

  /** The same with water and sewer at other prices, as a multiple. */
  public Tariff withWaterTimes(BigDecimal factor) {
    return new Tariff(
        id,
        name,
        water.times(factor),
        sewer.times(factor),
        salt,
        potassium,
        perKilowattHour,
        escalation);
  }

  /** The price of a pound of the given salt. */
  public BigMoney perPound(Regenerant regenerant) {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? salt : potassium;
  }

  /** The currency of all prices. */
  public CurrencyUnit currency() {
    return salt.getCurrencyUnit();
  }
}

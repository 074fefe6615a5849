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
 * Prices at one address, all in one currency.
 *
 * <pre>{@code
 * Tariff tariff =
 *     Tariff.builder("town", CurrencyUnit.USD)
 *         .water(BlockRate.flat(BigMoney.parse("USD 7.20")))
 *         .salt(BigMoney.parse("USD 0.19"))
 *         .build();
 * }</pre>
 *
 * <p>Immutable; equal tariffs are equal.
 */
public final class Tariff {
  private static final int QUANTITY_DECIMALS = 4;

  private final Values values;

  private Tariff(Values values) {
    this.values = values;
  }

  /**
   * Begins a tariff with the round figures of {@link #placeholder}.
   *
   * @param id short name within a job, also its name on paper unless set
   */
  public static Builder builder(String id, CurrencyUnit currency) {
    return new Builder(id, currency);
  }

  /** Round figures for a first look where no tariff was entered; not a published price. */
  public static Tariff placeholder(CurrencyUnit currency) {
    return builder("placeholder", currency).name("round figures, no tariff entered").build();
  }

  /** This tariff, to be changed. */
  public Builder toBuilder() {
    return new Builder(id(), currency())
        .name(name())
        .water(water())
        .sewer(sewer())
        .salt(salt())
        .potassium(potassium())
        .perKilowattHour(perKilowattHour())
        .escalation(escalation());
  }

  /** Short name within a job. */
  public String id() {
    return values.id;
  }

  /** Name on paper. */
  public String name() {
    return values.name;
  }

  /** Rate of the water. */
  public BlockRate water() {
    return values.water;
  }

  /** Rate of the sewer; zero prices with a septic system. */
  public BlockRate sewer() {
    return values.sewer;
  }

  /** Price of a pound of sodium chloride. */
  public BigMoney salt() {
    return values.salt;
  }

  /** Price of a pound of potassium chloride. */
  public BigMoney potassium() {
    return values.potassium;
  }

  /** The price of a pound of the given salt. */
  public BigMoney perPound(Regenerant regenerant) {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? salt() : potassium();
  }

  /** Price of a kilowatt-hour of electricity. */
  public BigMoney perKilowattHour() {
    return values.perKilowattHour;
  }

  /** Yearly rise of these prices. */
  public Escalation escalation() {
    return values.escalation;
  }

  /** The currency of all prices. */
  public CurrencyUnit currency() {
    return salt().getCurrencyUnit();
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
    return water().yearlyCostOf(yearlyUse, more);
  }

  /** The same for the sewer. */
  public BigMoney sewerCost(Volume yearlyUse, Volume more) {
    return sewer().yearlyCostOf(yearlyUse, more);
  }

  /** What energy costs, unrounded. */
  public BigMoney energyCost(Energy energy) {
    return times(perKilowattHour(), energy.kilowattHours());
  }

  /** Salt, water and sewer of a year together, to the smallest unit of the currency. */
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

  /**
   * The same with both salts at another price.
   *
   * @param factor zero or more; dimensionless
   * @throws IllegalArgumentException when a price leaves its range
   */
  public Tariff withSaltTimes(BigDecimal factor) {
    return toBuilder()
        .salt(salt().multipliedBy(factor))
        .potassium(potassium().multipliedBy(factor))
        .build();
  }

  /**
   * The same with water and sewer at other prices.
   *
   * @param factor zero or more; dimensionless
   * @throws IllegalArgumentException when a price leaves its range
   */
  public Tariff withWaterTimes(BigDecimal factor) {
    return toBuilder().water(water().times(factor)).sewer(sewer().times(factor)).build();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tariff tariff && values.equals(tariff.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Tariff");
  }

  private record Values(
      String id,
      String name,
      BlockRate water,
      BlockRate sewer,
      BigMoney salt,
      BigMoney potassium,
      BigMoney perKilowattHour,
      Escalation escalation) {}

  /** Collects a tariff. */
  public static final class Builder {
    private final String id;
    private final CurrencyUnit currency;
    private String name;
    private BlockRate water;
    private BlockRate sewer;
    private BigMoney salt;
    private BigMoney potassium;
    private BigMoney perKilowattHour;
    private Escalation escalation = Escalation.USUAL;

    private Builder(String id, CurrencyUnit currency) {
      this.id = id;
      this.currency = currency;
      name = id;
      water = BlockRate.flat(price("6"));
      sewer = BlockRate.flat(price("8"));
      salt = price("0.2");
      potassium = price("0.7");
      perKilowattHour = price("0.16");
    }

    private BigMoney price(String amount) {
      return BigMoney.of(currency, new BigDecimal(amount));
    }

    private BigMoney require(String what, BigMoney price) {
      return Prices.plain(Prices.require(what, price, currency));
    }

    private BlockRate require(String what, BlockRate rate) {
      Prices.requireCurrency(what, rate.blocks().get(0).perThousandGallons(), currency);
      return rate;
    }

    /** Name on paper; the id unless set. */
    public Builder name(String text) {
      name = text;
      return this;
    }

    /**
     * Rate of the water; 6 for each 1,000 gal unless set.
     *
     * @throws IllegalArgumentException in another currency
     */
    public Builder water(BlockRate rate) {
      water = require("rate of the water", rate);
      return this;
    }

    /**
     * Rate of the sewer, at zero with a septic system; 8 for each 1,000 gal unless set.
     *
     * @throws IllegalArgumentException in another currency
     */
    public Builder sewer(BlockRate rate) {
      sewer = require("rate of the sewer", rate);
      return this;
    }

    /**
     * Price of a pound of sodium chloride; 0.20 unless set.
     *
     * @param perPound 0 to 10^12
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder salt(BigMoney perPound) {
      salt = require("price of salt", perPound);
      return this;
    }

    /**
     * Price of a pound of potassium chloride; 0.70 unless set.
     *
     * @param perPound 0 to 10^12
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder potassium(BigMoney perPound) {
      potassium = require("price of potassium chloride", perPound);
      return this;
    }

    /**
     * Price of a kilowatt-hour; 0.16 unless set.
     *
     * @param price 0 to 10^12
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder perKilowattHour(BigMoney price) {
      perKilowattHour = require("price of electricity", price);
      return this;
    }

    /** Yearly rise of these prices; {@link Escalation#USUAL} unless set. */
    public Builder escalation(Escalation rise) {
      escalation = rise;
      return this;
    }

    /** The finished tariff; later calls of this builder do not change it. */
    public Tariff build() {
      return new Tariff(
          new Values(id, name, water, sewer, salt, potassium, perKilowattHour, escalation));
    }
  }
}

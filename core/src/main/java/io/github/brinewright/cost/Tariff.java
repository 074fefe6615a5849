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
   * @param currency of all its prices
   * @return a builder of the tariff
   */
  public static Builder builder(String id, CurrencyUnit currency) {
    return new Builder(id, currency);
  }

  /**
   * {@return round figures for a first look where no tariff was entered; not a published price}
   *
   * @param currency of all its prices
   */
  public static Tariff placeholder(CurrencyUnit currency) {
    return builder("placeholder", currency).name("round figures, no tariff entered").build();
  }

  /**
   * This tariff, to be changed.
   *
   * @return a builder that begins with all that this has
   */
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

  /** {@return the short name within a job} */
  public String id() {
    return values.id;
  }

  /** {@return the name on paper} */
  public String name() {
    return values.name;
  }

  /** {@return the rate of the water} */
  public BlockRate water() {
    return values.water;
  }

  /** {@return the rate of the sewer; zero prices with a septic system} */
  public BlockRate sewer() {
    return values.sewer;
  }

  /** {@return the price of a pound of sodium chloride} */
  public BigMoney salt() {
    return values.salt;
  }

  /** {@return the price of a pound of potassium chloride} */
  public BigMoney potassium() {
    return values.potassium;
  }

  /**
   * {@return the price of a pound of the given salt}
   *
   * @param regenerant the salt
   */
  public BigMoney perPound(Regenerant regenerant) {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? salt() : potassium();
  }

  /** {@return the price of a kilowatt-hour of electricity} */
  public BigMoney perKilowattHour() {
    return values.perKilowattHour;
  }

  /** {@return the yearly rise of these prices} */
  public Escalation escalation() {
    return values.escalation;
  }

  /** {@return the currency of all prices} */
  public CurrencyUnit currency() {
    return salt().getCurrencyUnit();
  }

  /**
   * {@return what a mass of salt costs, unrounded}
   *
   * @param regenerant the salt
   * @param mass of salt
   */
  public BigMoney saltCost(Regenerant regenerant, Mass mass) {
    return times(perPound(regenerant), mass.pounds());
  }

  /**
   * {@return what more water costs a home in a year, at the steps of the rate it falls in;
   * unrounded}
   *
   * @param yearlyUse of the home without it
   * @param more of a year
   */
  public BigMoney waterCost(Volume yearlyUse, Volume more) {
    return water().yearlyCostOf(yearlyUse, more);
  }

  /**
   * {@return what that water costs a home at the sewer in a year, in the same way; unrounded}
   *
   * @param yearlyUse of the home without it
   * @param more of a year
   */
  public BigMoney sewerCost(Volume yearlyUse, Volume more) {
    return sewer().yearlyCostOf(yearlyUse, more);
  }

  /**
   * {@return what energy costs, unrounded}
   *
   * @param energy drawn from the mains
   */
  public BigMoney energyCost(Energy energy) {
    return times(perKilowattHour(), energy.kilowattHours());
  }

  /**
   * {@return the price of salt, water and sewer of a year together, to the smallest unit of the
   * currency}
   *
   * @param regenerant the salt
   * @param mass of salt in a year
   * @param yearlyUse water of the home without the softener's own
   * @param more water of a year on top of that
   */
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
   * {@return the same with both salts at another price}
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
   * {@return the same with water and sewer at other prices}
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

    /**
     * Name on paper; the id unless set.
     *
     * @param text as it is printed
     * @return this builder
     */
    public Builder name(String text) {
      name = text;
      return this;
    }

    /**
     * Rate of the water; 6 for each 1,000 gal unless set.
     *
     * @param rate in the currency of the tariff
     * @return this builder
     * @throws IllegalArgumentException in another currency
     */
    public Builder water(BlockRate rate) {
      water = require("rate of the water", rate);
      return this;
    }

    /**
     * Rate of the sewer, at zero with a septic system; 8 for each 1,000 gal unless set.
     *
     * @param rate in the currency of the tariff
     * @return this builder
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
     * @return this builder
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
     * @return this builder
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
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder perKilowattHour(BigMoney price) {
      perKilowattHour = require("price of electricity", price);
      return this;
    }

    /**
     * Yearly rise of these prices; {@link Escalation#USUAL} unless set.
     *
     * @param rise as fractions a year
     * @return this builder
     */
    public Builder escalation(Escalation rise) {
      escalation = rise;
      return this;
    }

    /** {@return the finished tariff; later calls of this builder do not change it} */
    public Tariff build() {
      return new Tariff(
          new Values(id, name, water, sewer, salt, potassium, perKilowattHour, escalation));
    }
  }
}

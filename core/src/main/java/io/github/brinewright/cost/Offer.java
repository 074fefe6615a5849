package io.github.brinewright.cost;

import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A softener with its prices, all in one currency.
 *
 * <pre>{@code
 * Offer offer =
 *     Offer.of(softener, Money.parse("USD 1480"))
 *         .installation(Money.parse("USD 420"))
 *         .build();
 * }</pre>
 *
 * <p>Immutable; equal offers are equal.
 */
public final class Offer {
  private final Values values;

  private Offer(Values values) {
    this.values = values;
  }

  /**
   * Begins an offer.
   *
   * @param softener that is sold
   * @param equipment its price with a clock; 0 to 10^12
   * @return a builder of the offer
   * @throws IllegalArgumentException outside that range
   */
  public static Builder of(Softener softener, Money equipment) {
    return new Builder(softener, equipment);
  }

  /**
   * {@return a softener whose prices are not known; all are zero}
   *
   * @param softener that is sold
   * @param currency of the zeros
   */
  public static Offer unpriced(Softener softener, CurrencyUnit currency) {
    return of(softener, Money.zero(currency)).build();
  }

  /**
   * This offer, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    return new Builder(softener(), equipment())
        .installation(installation())
        .yearlyService(yearlyService())
        .meterExtra(meterExtra());
  }

  /** {@return the softener} */
  public Softener softener() {
    return values.softener;
  }

  /** {@return the price of the softener with a clock} */
  public Money equipment() {
    return values.equipment;
  }

  /**
   * {@return the price of the softener with a control}
   *
   * @param control one that it is sold with
   */
  public Money equipment(Control control) {
    return control.metered() ? equipment().plus(meterExtra()) : equipment();
  }

  /** {@return the price of the installation} */
  public Money installation() {
    return values.installation;
  }

  /** {@return the price of a year's service} */
  public Money yearlyService() {
    return values.yearlyService;
  }

  /** {@return the price of a metered control on top of that of a clock} */
  public Money meterExtra() {
    return values.meterExtra;
  }

  /** {@return the currency of all prices} */
  public CurrencyUnit currency() {
    return equipment().getCurrencyUnit();
  }

  /** {@return whether no price is known} */
  public boolean isUnpriced() {
    return equipment().isZero() && installation().isZero();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Offer offer && values.equals(offer.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return "Offer of "
        + softener().id()
        + ": equipment "
        + equipment()
        + ", installation "
        + installation()
        + ", yearly service "
        + yearlyService()
        + ", meter "
        + meterExtra();
  }

  private record Values(
      Softener softener,
      Money equipment,
      Money installation,
      Money yearlyService,
      Money meterExtra) {}

  /** Collects an offer. */
  public static final class Builder {
    private final Softener softener;
    private final Money equipment;
    private Money installation;
    private Money yearlyService;
    private Money meterExtra;

    private Builder(Softener softener, Money equipment) {
      this.softener = softener;
      this.equipment = equipment;
      Money zero = Money.zero(equipment.getCurrencyUnit());
      installation = zero;
      yearlyService = zero;
      meterExtra = zero;
      require("price of the softener", equipment);
    }

    private Money require(String name, Money price) {
      return Prices.require(name, price, equipment.getCurrencyUnit());
    }

    /**
     * Price of the installation; zero unless set.
     *
     * @param price 0 to 10^12 in the currency of the softener's price
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder installation(Money price) {
      installation = require("price of the installation", price);
      return this;
    }

    /**
     * Price of a year's service; zero unless set.
     *
     * @param price 0 to 10^12 in the currency of the softener's price
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder yearlyService(Money price) {
      yearlyService = require("price of a year's service", price);
      return this;
    }

    /**
     * Price of a metered control on top of that of a clock; zero unless set.
     *
     * @param price 0 to 10^12 in the currency of the softener's price
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder meterExtra(Money price) {
      meterExtra = require("price of a meter", price);
      return this;
    }

    /** {@return the finished offer; later calls of this builder do not change it} */
    public Offer build() {
      return new Offer(new Values(softener, equipment, installation, yearlyService, meterExtra));
    }
  }
}

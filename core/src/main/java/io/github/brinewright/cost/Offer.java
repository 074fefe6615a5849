package io.github.brinewright.cost;

import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A softener with its prices.
 *
 * @param softener the softener
 * @param equipment price of the softener; zero or more
 * @param installation price of the installation; zero or more
 * @param yearlyService price of a year's service; zero or more
 * @param meterExtra price of a metered control on top of that of a clock; zero or more
 */
public record Offer(
    Softener softener, Money equipment, Money installation, Money yearlyService, Money meterExtra) {
  /** A softener whose price is the same with and without a meter. */
  public Offer(Softener softener, Money equipment, Money installation, Money yearlyService) {
    this(softener, equipment, installation, yearlyService, Money.zero(equipment.getCurrencyUnit()));
  }

  /**
   * @throws IllegalArgumentException when a price is negative
   */
  public Offer {
    for (Money price : new Money[] {equipment, installation, yearlyService, meterExtra}) {
      if (price.isNegative()) {
        throw new IllegalArgumentException("a price of " + price + " is below zero");
      }
    }
  }

  /** A softener whose prices are not known; all are zero. */
  public static Offer unpriced(Softener softener, CurrencyUnit currency) {
    Money zero = Money.zero(currency);
    return new Offer(softener, zero, zero, zero, zero);
  }

  /** Price of the softener with a control. */
  public Money equipment(Control control) {
    return control.metered() ? equipment.plus(meterExtra) : equipment;
  }

  /** Whether no price is known. */
  public boolean isUnpriced() {
    return equipment.isZero() && installation.isZero();
  }
}

package io.github.brinewright.cost;

import io.github.brinewright.sizing.SoftenerUnit;
import org.joda.money.Money;

/**
 * A unit with its prices.
 *
 * @param unit the unit
 * @param equipment price of the unit; zero or more
 * @param installation price of the installation; zero or more
 * @param yearlyService price of a year's service; zero or more
 */
public record Offer(SoftenerUnit unit, Money equipment, Money installation, Money yearlyService) {
  /**
   * @throws IllegalArgumentException when a price is negative
   */
  public Offer {
    for (Money price : new Money[] {equipment, installation, yearlyService}) {
      if (price.isNegative()) {
        throw new IllegalArgumentException("a price of " + price + " is below zero");
      }
    }
  }

  /** A unit whose prices are not known; all are zero. */
  public static Offer unpriced(SoftenerUnit unit, org.joda.money.CurrencyUnit currency) {
    Money zero = Money.zero(currency);
    return new Offer(unit, zero, zero, zero);
  }

  /** Whether no price is known. */
  public boolean isUnpriced() {
    return equipment.isZero() && installation.isZero();
  }
}

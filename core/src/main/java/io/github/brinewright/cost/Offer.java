package io.github.brinewright.cost;

import io.github.brinewright.regeneration.Control;
import io.github.brinewright.sizing.SoftenerUnit;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A unit with its prices.
 *
 * @param unit the unit
 * @param equipment price of the unit; zero or more
 * @param installation price of the installation; zero or more
 * @param yearlyService price of a year's service; zero or more
 * @param meterExtra price of a metered control on top of that of a clock; zero or more
 */
public record Offer(
    SoftenerUnit unit, Money equipment, Money installation, Money yearlyService, Money meterExtra) {
  /** A unit whose price is the same with and without a meter. */
  public Offer(SoftenerUnit unit, Money equipment, Money installation, Money yearlyService) {
    this(unit, equipment, installation, yearlyService, Money.zero(equipment.getCurrencyUnit()));
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

  /** A unit whose prices are not known; all are zero. */
  public static Offer unpriced(SoftenerUnit unit, CurrencyUnit currency) {
    Money zero = Money.zero(currency);
    return new Offer(unit, zero, zero, zero, zero);
  }

  /** Price of the unit with a control. */
  public Money equipment(Control control) {
    return control.metered() ? equipment.plus(meterExtra) : equipment;
  }

  /** Whether no price is known. */
  public boolean isUnpriced() {
    return equipment.isZero() && installation.isZero();
  }
}

package io.github.brinewright.cost;

import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a dealer asks for work on a softener that is already there. Example:
 *
 * <pre>{@code
 * ServicePrices prices =
 *     ServicePrices.of(Money.parse("USD 260"), Money.parse("USD 85"));
 * }</pre>
 *
 * @param meter price of a meter put on it, work included; 0 to 10^12; empty when none is stated
 * @param visit price of a visit that sets it; 0 to 10^12, in the same currency; empty when none is
 *     stated
 */
public record ServicePrices(Optional<Money> meter, Optional<Money> visit) {
  /** No price is stated. */
  public static final ServicePrices NONE = new ServicePrices(Optional.empty(), Optional.empty());

  /**
   * @param meter price of a meter put on it, work included
   * @param visit price of a visit that sets it
   * @throws IllegalArgumentException outside 0 to 10^12, or in two currencies
   */
  public ServicePrices {
    meter.ifPresent(price -> Prices.require("price of a meter", price, price.getCurrencyUnit()));
    CurrencyUnit one = meter.or(() -> visit).map(Money::getCurrencyUnit).orElse(CurrencyUnit.USD);
    visit.ifPresent(price -> Prices.require("price of a visit", price, one));
  }

  /**
   * {@return both prices}
   *
   * @param meter price of a meter put on it, work included; 0 to 10^12
   * @param visit price of a visit that sets it; 0 to 10^12, in the same currency
   * @throws IllegalArgumentException outside 0 to 10^12, or in two currencies
   */
  public static ServicePrices of(Money meter, Money visit) {
    return new ServicePrices(Optional.of(meter), Optional.of(visit));
  }

  /** {@return the currency of the prices; empty when none is stated} */
  public Optional<CurrencyUnit> currency() {
    return meter.or(() -> visit).map(Money::getCurrencyUnit);
  }
}

package io.github.brinewright.cost;

import java.math.BigDecimal;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;

/** Checks of prices and rates; each message names the value, the limit and what to do. */
final class Prices {
  private static final BigDecimal HIGHEST = BigDecimal.TEN.pow(12);
  private static final int FINEST_SCALE = 8;

  private Prices() {}

  /** A price in the wanted currency, 0 to 10^12 of its units. */
  static <M extends BigMoneyProvider> M require(String name, M price, CurrencyUnit currency) {
    requireCurrency(name, price, currency);
    BigMoney exact = price.toBigMoney();
    if (exact.isNegative() || exact.getAmount().compareTo(HIGHEST) > 0) {
      throw new IllegalArgumentException(
          name + " is " + price + ", but must be from 0 to " + HIGHEST.toPlainString());
    }
    return price;
  }

  static void requireCurrency(String name, BigMoneyProvider price, CurrencyUnit currency) {
    CurrencyUnit own = price.toBigMoney().getCurrencyUnit();
    if (!own.equals(currency)) {
      throw new IllegalArgumentException(
          name + " is in " + own + ", but " + currency + " is wanted; use one currency throughout");
    }
  }

  /** The same price without needless zeros, so that equal prices are equal. */
  static BigMoney plain(BigMoney price) {
    return BigMoney.of(price.getCurrencyUnit(), price.getAmount().stripTrailingZeros());
  }

  /** A rate without needless zeros, from 0 to a limit, with at most 8 decimals. */
  static BigDecimal rate(String name, BigDecimal rate, String highest) {
    BigDecimal plain = rate.stripTrailingZeros();
    if (rate.signum() < 0 || rate.compareTo(new BigDecimal(highest)) > 0) {
      throw new IllegalArgumentException(name + " is " + rate + ", but must be 0 to " + highest);
    }
    if (plain.scale() > FINEST_SCALE) {
      throw new IllegalArgumentException(
          name + " has " + plain.scale() + " decimals, but may have 8 at most; round it");
    }
    return plain;
  }
}

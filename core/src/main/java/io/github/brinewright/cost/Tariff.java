package io.github.brinewright.cost;

import io.github.brinewright.resin.Regenerant;
import java.math.BigDecimal;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

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

  /** The price of a pound of the given salt. */
  public BigMoney perPound(Regenerant regenerant) {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? salt : potassium;
  }

  /** The currency of all prices. */
  public CurrencyUnit currency() {
    return salt.getCurrencyUnit();
  }
}

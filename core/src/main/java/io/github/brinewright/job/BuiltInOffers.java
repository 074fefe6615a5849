package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Beds of the sizes usually sold, for a first look without a price list. Their prices are round
 * placeholders, so that a bigger bed costs more; they are nobody's prices.
 */
public final class BuiltInOffers {
  private static final double[] CUBIC_FEET = {0.75, 1, 1.5, 2, 2.5, 3, 4};
  private static final double BASE_PRICE = 800;
  private static final double PRICE_PER_CUBIC_FOOT = 500;

  private BuiltInOffers() {}

  /**
   * {@return all of them, in a currency}
   *
   * @param currency of their placeholder prices
   */
  public static List<Offer> all(CurrencyUnit currency) {
    return DoubleStream.of(CUBIC_FEET).mapToObj(volume -> offer(volume, currency)).toList();
  }

  private static Offer offer(double volume, CurrencyUnit currency) {
    BigDecimal size = BigDecimal.valueOf(volume).stripTrailingZeros();
    Softener softener =
        Softener.withResin("bed-" + size.toPlainString(), Volume.ofCubicFeet(volume))
            .name("Bed of " + size.toPlainString() + " ft³ (placeholder price)")
            .dosages(Stream.of(4.0, 6.0, 8.0).map(SaltDosage::ofPoundsPerCubicFoot).toList())
            .controls(EnumSet.of(Control.CLOCK, Control.METERED_AT_NIGHT))
            .build();
    BigDecimal price = BigDecimal.valueOf(BASE_PRICE + PRICE_PER_CUBIC_FOOT * volume);
    return Offer.of(softener, Money.of(currency, price, RoundingMode.HALF_EVEN)).build();
  }
}

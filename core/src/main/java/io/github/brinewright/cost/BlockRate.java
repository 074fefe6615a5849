package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.BigMoney;
import org.jspecify.annotations.Nullable;

/**
 * A water or sewer rate in steps of monthly use, all in one currency. Fixed charges are left out:
 * they do not change when a softener is added. Immutable; equal rates are equal.
 *
 * <pre>{@code
 * BlockRate rate =
 *     new BlockRate(
 *         List.of(
 *             new BlockRate.Block(Volume.ofGallons(3_000), BigMoney.parse("USD 4")),
 *             new BlockRate.Block(BlockRate.UNLIMITED, BigMoney.parse("USD 6"))));
 * }</pre>
 */
public final class BlockRate {
  private static final int GALLON_DECIMALS = 4;

  /** Where the last step ends: beyond any home. */
  public static final Volume UNLIMITED = Volume.ofGallons(1e12);

  /**
   * One step of the rate.
   *
   * @param upTo monthly use at which the next step begins; above 0, up to 10^12 gal
   * @param perThousandGallons price of 1,000 gallons within the step; 0 to 10^12
   */
  public record Block(Volume upTo, BigMoney perThousandGallons) {
    /**
     * @param upTo monthly use at which the next step begins; above 0, up to 10^12 gal
     * @param perThousandGallons price of 1,000 gallons within the step; 0 to 10^12
     * @throws IllegalArgumentException outside the ranges above
     */
    public Block {
      Require.positive("end of a step of the rate", upTo);
      Require.between("end of a step of the rate in gal", upTo.gallons(), 0, UNLIMITED.gallons());
      perThousandGallons =
          Prices.plain(
              Prices.require(
                  "price of 1,000 gal", perThousandGallons, perThousandGallons.getCurrencyUnit()));
    }
  }

  private final List<Block> blocks;

  /**
   * @param blocks at least one, by rising use; the last one is taken as unlimited
   * @throws IllegalArgumentException when there is none, they do not rise, or their currencies
   *     differ
   */
  public BlockRate(List<Block> blocks) {
    if (blocks.isEmpty()) {
      throw new IllegalArgumentException("a rate needs at least one step");
    }
    for (int i = 1; i < blocks.size(); i++) {
      if (!blocks.get(i).upTo().exceeds(blocks.get(i - 1).upTo())) {
        throw new IllegalArgumentException("step " + (i + 1) + " must end above step " + i);
      }
      Prices.requireCurrency(
          "the price of step " + (i + 1),
          blocks.get(i).perThousandGallons(),
          blocks.get(0).perThousandGallons().getCurrencyUnit());
    }
    this.blocks = List.copyOf(blocks);
  }

  /**
   * {@return one price for every gallon}
   *
   * @param perThousandGallons 0 to 10^12
   * @throws IllegalArgumentException outside that range
   */
  public static BlockRate flat(BigMoney perThousandGallons) {
    return new BlockRate(List.of(new Block(UNLIMITED, perThousandGallons)));
  }

  /** {@return the steps} */
  public List<Block> blocks() {
    return blocks;
  }

  /**
   * {@return the same steps at other prices}
   *
   * @param factor zero or more; dimensionless
   * @throws IllegalArgumentException when a price leaves its range
   */
  public BlockRate times(BigDecimal factor) {
    return new BlockRate(
        blocks.stream()
            .map(b -> new Block(b.upTo(), b.perThousandGallons().multipliedBy(factor)))
            .toList());
  }

  /**
   * {@return the charge by volume for a month, unrounded}
   *
   * @param use 0 to 10^12 gal
   * @throws IllegalArgumentException outside that range
   */
  public BigMoney monthly(Volume use) {
    Require.between("use of a month in gal", use.gallons(), 0, UNLIMITED.gallons());
    BigMoney charge = blocks.get(0).perThousandGallons().multipliedBy(0);
    double below = 0;
    for (int i = 0; i < blocks.size(); i++) {
      boolean last = i == blocks.size() - 1;
      double end = last ? use.gallons() : Math.min(use.gallons(), blocks.get(i).upTo().gallons());
      if (end > below) {
        charge = charge.plus(price(blocks.get(i), end - below));
        below = end;
      }
    }
    return charge;
  }

  private static BigMoney price(Block block, double gallons) {
    BigDecimal thousands =
        BigDecimal.valueOf(gallons)
            .setScale(GALLON_DECIMALS, RoundingMode.HALF_EVEN)
            .movePointLeft(3);
    return block.perThousandGallons().multipliedBy(thousands);
  }

  /**
   * {@return what more use adds to a year of bills, unrounded: twelve times the month with it less
   * the month without it} Example: 6.00 for each 1,000 gal, 3,000 gal more → 18.00.
   *
   * @param yearlyUse use of a year without it; zero or more
   * @param more what comes on top in a year; zero or more
   * @throws IllegalArgumentException when one is negative, or a month above 10^12 gal
   */
  public BigMoney yearlyCostOf(Volume yearlyUse, Volume more) {
    Require.notNegative("more use of a year", more);
    Volume month = yearlyUse.dividedBy(12);
    return monthly(month.plus(more.dividedBy(12))).minus(monthly(month)).multipliedBy(12);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BlockRate rate && blocks.equals(rate.blocks);
  }

  @Override
  public int hashCode() {
    return blocks.hashCode();
  }

  @Override
  public String toString() {
    return "BlockRate" + blocks;
  }
}

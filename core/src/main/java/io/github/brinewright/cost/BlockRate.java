package io.github.brinewright.cost;

import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.BigMoney;
import org.jspecify.annotations.Nullable;

/**
 * A water or sewer rate in steps of monthly use. Fixed charges are left out: they do not change
 * when a softener is added.
 */
public final class BlockRate {
  private static final int GALLON_DECIMALS = 4;

  /**
   * One step of the rate.
   *
   * @param upTo monthly use at which the next step begins
   * @param perThousandGallons price of 1,000 gallons within the step; zero or more
   */
  public record Block(Volume upTo, BigMoney perThousandGallons) {}

  /** Where the last step ends: beyond any home. */
  public static final Volume UNLIMITED = Volume.ofGallons(1e12);

  private final List<Block> blocks;

  /**
   * @param blocks at least one, by rising use; the last one is taken as unlimited
   * @throws IllegalArgumentException when there is none, they do not rise, or a price is negative
   */
  public BlockRate(List<Block> blocks) {
    if (blocks.isEmpty()) {
      throw new IllegalArgumentException("a rate needs at least one step");
    }
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i).perThousandGallons().isNegative()) {
        throw new IllegalArgumentException("the price of step " + (i + 1) + " is negative");
      }
      if (i > 0 && !blocks.get(i).upTo().exceeds(blocks.get(i - 1).upTo())) {
        throw new IllegalArgumentException("step " + (i + 1) + " must end above step " + i);
      }
    }
    this.blocks = List.copyOf(blocks);
  }

  /** One price for every gallon. */
  public static BlockRate flat(BigMoney perThousandGallons) {
    return new BlockRate(List.of(new Block(UNLIMITED, perThousandGallons)));
  }

  /** The steps. */
  public List<Block> blocks() {
    return blocks;
  }

  /** The same steps at other prices, as a multiple. */
  public BlockRate times(BigDecimal factor) {
    return new BlockRate(
        blocks.stream()
            .map(b -> new Block(b.upTo(), b.perThousandGallons().multipliedBy(factor)))
            .toList());
  }

  /** The charge by volume for a month, unrounded. */
  public BigMoney monthly(Volume use) {
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
   * What more use adds to a year of bills: twelve times the month with it less the month without
   * it.
   *
   * @param yearlyUse use of a year without it
   * @param more what comes on top in a year
   */
  public BigMoney yearlyCostOf(Volume yearlyUse, Volume more) {
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
    return blocks.toString();
  }
}

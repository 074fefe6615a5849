package io.github.brinewright.softener;

import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * The round tank that stores salt above its water. Loose salt takes 72 lb for each cubic foot and
 * leaves 40 % of its bulk to water (common practice), so the refill stands higher than in an empty
 * tank. Example: 18 in wide, 33 in high, filled to 6 in below the rim → 286 lb of salt.
 *
 * @param diameter 8 to 60 in
 * @param height 8 to 60 in
 */
public record BrineTank(Length diameter, Length height) {
  private static final double POUNDS_PER_CUBIC_FOOT = 72;
  private static final double FREE_AMONG_SALT = 0.4;
  private static final Length FREE_RIM = Length.ofInches(6);

  /** Diameter and height of a brine tank: 8 to 60 in. */
  public static final Bounds<Length> SIDE = Bounds.of(Length.ofInches(8), Length.ofInches(60));

  /**
   * @param diameter 8 to 60 in
   * @param height 8 to 60 in
   * @throws IllegalArgumentException when diameter or height is out of range
   */
  public BrineTank {
    SIDE.require("brine tank diameter", diameter);
    SIDE.require("brine tank height", height);
  }

  /** {@return the salt that it holds when filled to 6 in below the rim} */
  public Mass storage() {
    Volume room = area().volumeOf(height.minus(FREE_RIM));
    return Mass.ofPounds(POUNDS_PER_CUBIC_FOOT * room.cubicFeet());
  }

  /**
   * {@return the height at which a refill stands among the salt; the float must sit above it}
   *
   * @param refill water let in
   */
  public Length level(Volume refill) {
    return area().depthOf(refill.dividedBy(FREE_AMONG_SALT));
  }

  /**
   * {@return whether a refill stays below the free rim}
   *
   * @param refill water let in
   */
  public boolean holds(Volume refill) {
    return height.minus(FREE_RIM).compareTo(level(refill)) > 0;
  }

  private Area area() {
    return Area.ofCircle(diameter);
  }

  /**
   * How long a filling lasts: 12 × salt stored ÷ salt of a year, in months.
   *
   * @param storage salt at the start; more than zero
   * @param yearly salt of a year; more than zero
   */
  public record Filling(Mass storage, Mass yearly) implements Explained {
    /**
     * @param storage salt at the start
     * @param yearly salt of a year
     * @throws IllegalArgumentException when either is not more than zero
     */
    public Filling {
      Require.positive("salt stored", storage);
      Require.positive("salt of a year", yearly);
    }

    private Worked<Double> worked() {
      return Worked.of(
          StepKind.MONTHS_BETWEEN_FILLINGS,
          Sources.DEFINITION,
          storage,
          yearly,
          (salt, year) -> 12 * salt.ratioTo(year));
    }

    /** {@return the months between fillings; dimensionless} */
    public double months() {
      return worked().value();
    }

    @Override
    public List<Step> steps() {
      return worked().steps();
    }
  }
}

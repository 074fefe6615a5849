package io.github.brinewright.softener;

import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * The round tank that stores salt above its water. Loose salt takes 72 lb for each cubic foot and
 * leaves 40 % of its bulk to water (common practice), so the refill stands higher than in an empty
 * tank. Example: 18 in wide, 33 in high, filled to 6 in below the rim → 286 lb of salt.
 *
 * @param diameter more than zero
 * @param height more than the free 6 in
 */
public record BrineTank(Length diameter, Length height) {
  private static final double POUNDS_PER_CUBIC_FOOT = 72;
  private static final double FREE_AMONG_SALT = 0.4;
  private static final Length FREE_RIM = Length.ofInches(6);

  /** Salt that it holds when filled to 6 in below the rim. */
  public Mass storage() {
    Volume room = area().volumeOf(height.minus(FREE_RIM));
    return Mass.ofPounds(POUNDS_PER_CUBIC_FOOT * room.cubicFeet());
  }

  /** Height at which a refill stands among the salt; the float must sit above it. */
  public Length level(Volume refill) {
    return area().depthOf(refill.dividedBy(FREE_AMONG_SALT));
  }

  /** Whether a refill stays below the free rim. */
  public boolean holds(Volume refill) {
    return height.minus(FREE_RIM).compareTo(level(refill)) > 0;
  }

  private Area area() {
    return Area.ofCircle(diameter);
  }

  /**
   * How long a filling lasts.
   *
   * @param storage salt at the start
   * @param yearly salt of a year; more than zero
   */
  public record Filling(Mass storage, Mass yearly) implements Explained {
    /** Months between fillings; dimensionless. */
    public double months() {
      return 12 * storage.ratioTo(yearly);
    }

    @Override
    public List<Step> steps() {
      return List.of(
          new Step(
              StepKind.MONTHS_BETWEEN_FILLINGS,
              List.of(Figure.of(storage, 0), Figure.of(yearly, 0)),
              Figure.of(months(), 1),
              Sources.DEFINITION));
    }
  }
}

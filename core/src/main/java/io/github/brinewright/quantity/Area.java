package io.github.brinewright.quantity;

/** A cross-section. */
public final class Area extends Quantity<Area> {
  private static final double SQUARE_METRE = 1 / 0.09290304;

  private Area(double base) {
    super(base);
  }

  /** An area of {@code value} square feet. */
  public static Area ofSquareFeet(double value) {
    return new Area(value);
  }

  /** An area of {@code value} square metres. */
  public static Area ofSquareMetres(double value) {
    return new Area(value * SQUARE_METRE);
  }

  /** The number of square feet. */
  public double squareFeet() {
    return base();
  }

  /** The number of square metres. */
  public double squareMetres() {
    return base() / SQUARE_METRE;
  }

  /** The cross-section of a round vessel. */
  public static Area ofCircle(Length diameter) {
    return new Area(Math.PI / 4 * diameter.feet() * diameter.feet());
  }

  /** The depth that a volume fills in a vessel of this cross-section. */
  public Length depthOf(Volume volume) {
    return Length.ofFeet(volume.cubicFeet() / base());
  }

  /** The volume of a cylinder of this cross-section. */
  public Volume volumeOf(Length depth) {
    return Volume.ofCubicFeet(base() * depth.feet());
  }

  /** The velocity of the given flow through this cross-section. */
  public FlowVelocity velocityOf(FlowRate flow) {
    return FlowVelocity.ofGallonsPerMinutePerSquareFoot(flow.gallonsPerMinute() / base());
  }

  @Override
  Area with(double base) {
    return new Area(base);
  }

  @Override
  String baseUnit() {
    return "ft2";
  }
}

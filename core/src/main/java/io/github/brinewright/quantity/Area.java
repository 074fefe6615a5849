package io.github.brinewright.quantity;

/** A cross-section. */
public final class Area extends Quantity<Area> {
  private static final double SQUARE_METRE = 1 / 0.09290304;

  private Area(double base) {
    super(base);
  }

  /**
   * {@return an area of {@code value} square feet}
   *
   * @param value a finite number of square feet
   */
  public static Area ofSquareFeet(double value) {
    return new Area(value);
  }

  /**
   * {@return an area of {@code value} square metres}
   *
   * @param value a finite number of square metres
   */
  public static Area ofSquareMetres(double value) {
    return new Area(value * SQUARE_METRE);
  }

  /** {@return the number of square feet} */
  public double squareFeet() {
    return base();
  }

  /** {@return the number of square metres} */
  public double squareMetres() {
    return base() / SQUARE_METRE;
  }

  /**
   * {@return the cross-section of a round vessel}
   *
   * @param diameter inner diameter of the vessel
   */
  public static Area ofCircle(Length diameter) {
    return new Area(Math.PI / 4 * diameter.feet() * diameter.feet());
  }

  /**
   * {@return the depth that a volume fills in a vessel of this cross-section}
   *
   * @param volume volume that fills the vessel
   */
  public Length depthOf(Volume volume) {
    return Length.ofFeet(volume.cubicFeet() / base());
  }

  /**
   * {@return the volume of a cylinder of this cross-section}
   *
   * @param depth height of the cylinder
   */
  public Volume volumeOf(Length depth) {
    return Volume.ofCubicFeet(base() * depth.feet());
  }

  /**
   * {@return the velocity of the given flow through this cross-section}
   *
   * @param flow flow that passes it
   */
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

package io.github.brinewright.quantity;

/** A volume of water, brine or resin. US gallons throughout. */
public final class Volume extends Quantity<Volume> {
  private static final double LITRE = 1 / 3.785411784;
  private static final double CUBIC_METRE = 1000 * LITRE;
  private static final double CUBIC_FOOT = 1728.0 / 231.0;

  private Volume(double base) {
    super(base);
  }

  /**
   * {@return a volume of {@code value} US gallons}
   *
   * @param value a finite number of US gallons
   */
  public static Volume ofGallons(double value) {
    return new Volume(value);
  }

  /**
   * {@return a volume of {@code value} litres}
   *
   * @param value a finite number of litres
   */
  public static Volume ofLitres(double value) {
    return new Volume(value * LITRE);
  }

  /**
   * {@return a volume of {@code value} cubic metres}
   *
   * @param value a finite number of cubic metres
   */
  public static Volume ofCubicMetres(double value) {
    return new Volume(value * CUBIC_METRE);
  }

  /**
   * {@return a volume of {@code value} cubic feet}
   *
   * @param value a finite number of cubic feet
   */
  public static Volume ofCubicFeet(double value) {
    return new Volume(value * CUBIC_FOOT);
  }

  /** {@return the number of US gallons} */
  public double gallons() {
    return base();
  }

  /** {@return the number of litres} */
  public double litres() {
    return base() / LITRE;
  }

  /** {@return the number of cubic metres} */
  public double cubicMetres() {
    return base() / CUBIC_METRE;
  }

  /** {@return the number of cubic feet} */
  public double cubicFeet() {
    return base() / CUBIC_FOOT;
  }

  @Override
  Volume with(double base) {
    return new Volume(base);
  }

  @Override
  String baseUnit() {
    return "gal";
  }
}

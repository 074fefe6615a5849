package io.github.brinewright.quantity;

/** A volume of water, brine or resin. US gallons throughout. */
public final class Volume extends Quantity<Volume> {
  private static final double LITRE = 1 / 3.785411784;
  private static final double CUBIC_METRE = 1000 * LITRE;
  private static final double CUBIC_FOOT = 1728.0 / 231.0;

  private Volume(double base) {
    super(base);
  }

  /** A volume of {@code value} US gallons. */
  public static Volume ofGallons(double value) {
    return new Volume(value);
  }

  /** A volume of {@code value} litres. */
  public static Volume ofLitres(double value) {
    return new Volume(value * LITRE);
  }

  /** A volume of {@code value} cubic metres. */
  public static Volume ofCubicMetres(double value) {
    return new Volume(value * CUBIC_METRE);
  }

  /** A volume of {@code value} cubic feet. */
  public static Volume ofCubicFeet(double value) {
    return new Volume(value * CUBIC_FOOT);
  }

  /** The number of US gallons. */
  public double gallons() {
    return base();
  }

  /** The number of litres. */
  public double litres() {
    return base() / LITRE;
  }

  /** The number of cubic metres. */
  public double cubicMetres() {
    return base() / CUBIC_METRE;
  }

  /** The number of cubic feet. */
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

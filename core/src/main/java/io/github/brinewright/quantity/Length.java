package io.github.brinewright.quantity;

/** A length: vessel diameter and height, bed depth, bead size. */
public final class Length extends Quantity<Length> {
  private static final double METRE = 1 / 0.0254;

  private Length(double base) {
    super(base);
  }

  /** A length of {@code value} inches. */
  public static Length ofInches(double value) {
    return new Length(value);
  }

  /** A length of {@code value} feet. */
  public static Length ofFeet(double value) {
    return new Length(value * 12.0);
  }

  /** A length of {@code value} metres. */
  public static Length ofMetres(double value) {
    return new Length(value * METRE);
  }

  /** A length of {@code value} millimetres. */
  public static Length ofMillimetres(double value) {
    return new Length(value * (METRE / 1000));
  }

  /** The number of inches. */
  public double inches() {
    return base();
  }

  /** The number of feet. */
  public double feet() {
    return base() / 12.0;
  }

  /** The number of metres. */
  public double metres() {
    return base() / METRE;
  }

  /** The number of millimetres. */
  public double millimetres() {
    return base() / (METRE / 1000);
  }

  @Override
  Length with(double base) {
    return new Length(base);
  }

  @Override
  String baseUnit() {
    return "in";
  }
}

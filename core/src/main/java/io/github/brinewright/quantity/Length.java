package io.github.brinewright.quantity;

/** A length: vessel diameter and height, bed depth, bead size. */
public final class Length extends Quantity<Length> {
  private static final double METRE = 1 / 0.0254;

  private Length(double base) {
    super(base);
  }

  /**
   * {@return a length of {@code value} inches}
   *
   * @param value a finite number of inches
   */
  public static Length ofInches(double value) {
    return new Length(value);
  }

  /**
   * {@return a length of {@code value} feet}
   *
   * @param value a finite number of feet
   */
  public static Length ofFeet(double value) {
    return new Length(value * 12.0);
  }

  /**
   * {@return a length of {@code value} metres}
   *
   * @param value a finite number of metres
   */
  public static Length ofMetres(double value) {
    return new Length(value * METRE);
  }

  /**
   * {@return a length of {@code value} millimetres}
   *
   * @param value a finite number of millimetres
   */
  public static Length ofMillimetres(double value) {
    return new Length(value * (METRE / 1000));
  }

  /** {@return the number of inches} */
  public double inches() {
    return base();
  }

  /** {@return the number of feet} */
  public double feet() {
    return base() / 12.0;
  }

  /** {@return the number of metres} */
  public double metres() {
    return base() / METRE;
  }

  /** {@return the number of millimetres} */
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

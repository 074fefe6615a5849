package io.github.brinewright.quantity;

/** A pressure or a pressure loss. */
public final class Pressure extends Quantity<Pressure> {
  private static final double PASCAL = 1 / 6894.757293168;

  private Pressure(double base) {
    super(base);
  }

  /** A pressure of {@code value} pounds per square inch. */
  public static Pressure ofPsi(double value) {
    return new Pressure(value);
  }

  /** A pressure of {@code value} pascals. */
  public static Pressure ofPascals(double value) {
    return new Pressure(value * PASCAL);
  }

  /** A pressure of {@code value} kilopascals. */
  public static Pressure ofKilopascals(double value) {
    return new Pressure(value * (1000 * PASCAL));
  }

  /** A pressure of {@code value} bar. */
  public static Pressure ofBar(double value) {
    return new Pressure(value * (100000 * PASCAL));
  }

  /** The number of pounds per square inch. */
  public double psi() {
    return base();
  }

  /** The number of pascals. */
  public double pascals() {
    return base() / PASCAL;
  }

  /** The number of kilopascals. */
  public double kilopascals() {
    return base() / (1000 * PASCAL);
  }

  /** The number of bar. */
  public double bar() {
    return base() / (100000 * PASCAL);
  }

  @Override
  Pressure with(double base) {
    return new Pressure(base);
  }

  @Override
  String baseUnit() {
    return "psi";
  }
}

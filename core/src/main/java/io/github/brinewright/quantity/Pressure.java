package io.github.brinewright.quantity;

/** A pressure or a pressure loss. */
public final class Pressure extends Quantity<Pressure> {
  private static final double PASCAL = 1 / 6894.757293168;

  private Pressure(double base) {
    super(base);
  }

  /**
   * {@return a pressure of {@code value} pounds per square inch}
   *
   * @param value a finite number of pounds per square inch
   */
  public static Pressure ofPsi(double value) {
    return new Pressure(value);
  }

  /**
   * {@return a pressure of {@code value} pascals}
   *
   * @param value a finite number of pascals
   */
  public static Pressure ofPascals(double value) {
    return new Pressure(value * PASCAL);
  }

  /**
   * {@return a pressure of {@code value} kilopascals}
   *
   * @param value a finite number of kilopascals
   */
  public static Pressure ofKilopascals(double value) {
    return new Pressure(value * (1000 * PASCAL));
  }

  /**
   * {@return a pressure of {@code value} bar}
   *
   * @param value a finite number of bar
   */
  public static Pressure ofBar(double value) {
    return new Pressure(value * (100000 * PASCAL));
  }

  /** {@return the number of pounds per square inch} */
  public double psi() {
    return base();
  }

  /** {@return the number of pascals} */
  public double pascals() {
    return base() / PASCAL;
  }

  /** {@return the number of kilopascals} */
  public double kilopascals() {
    return base() / (1000 * PASCAL);
  }

  /** {@return the number of bar} */
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

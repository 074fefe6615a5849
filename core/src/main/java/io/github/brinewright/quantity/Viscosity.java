package io.github.brinewright.quantity;

/** Dynamic viscosity. */
public final class Viscosity extends Quantity<Viscosity> {
  private Viscosity(double base) {
    super(base);
  }

  /**
   * {@return a viscosity of {@code value} millipascal seconds}
   *
   * @param value a finite number of millipascal seconds
   */
  public static Viscosity ofMillipascalSeconds(double value) {
    return new Viscosity(value);
  }

  /** {@return the number of millipascal seconds} */
  public double millipascalSeconds() {
    return base();
  }

  @Override
  Viscosity with(double base) {
    return new Viscosity(base);
  }

  @Override
  String baseUnit() {
    return "mPa s";
  }
}

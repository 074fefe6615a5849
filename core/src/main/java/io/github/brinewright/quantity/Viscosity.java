package io.github.brinewright.quantity;

/** Dynamic viscosity. */
public final class Viscosity extends Quantity<Viscosity> {
  private Viscosity(double base) {
    super(base);
  }

  /** A viscosity of {@code value} millipascal seconds. */
  public static Viscosity ofMillipascalSeconds(double value) {
    return new Viscosity(value);
  }

  /** The number of millipascal seconds. */
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

package io.github.brinewright.quantity;

/** Mass of a unit volume: water, brine, resin beads. */
public final class Density extends Quantity<Density> {
  private Density(double base) {
    super(base);
  }

  /**
   * {@return a density of {@code value} kilograms per cubic metre}
   *
   * @param value a finite number of kilograms per cubic metre
   */
  public static Density ofKilogramsPerCubicMetre(double value) {
    return new Density(value);
  }

  /** {@return the number of kilograms per cubic metre} */
  public double kilogramsPerCubicMetre() {
    return base();
  }

  @Override
  Density with(double base) {
    return new Density(base);
  }

  @Override
  String baseUnit() {
    return "kg/m3";
  }
}

package io.github.brinewright.quantity;

/** Hardness removed per mass of salt used. */
public final class SaltEfficiency extends Quantity<SaltEfficiency> {
  private static final double GRAM_PER_KILOGRAM = 0.45359237 / 0.06479891;

  private SaltEfficiency(double base) {
    super(base);
  }

  /**
   * {@return a salt efficiency of {@code value} grains per pound}
   *
   * @param value a finite number of grains per pound
   */
  public static SaltEfficiency ofGrainsPerPound(double value) {
    return new SaltEfficiency(value);
  }

  /**
   * {@return a salt efficiency of {@code value} grams of CaCO3 per kilogram}
   *
   * @param value a finite number of grams of CaCO3 per kilogram
   */
  public static SaltEfficiency ofGramsPerKilogram(double value) {
    return new SaltEfficiency(value * GRAM_PER_KILOGRAM);
  }

  /** {@return the number of grains per pound} */
  public double grainsPerPound() {
    return base();
  }

  /** {@return the number of grams of CaCO3 per kilogram} */
  public double gramsPerKilogram() {
    return base() / GRAM_PER_KILOGRAM;
  }

  @Override
  SaltEfficiency with(double base) {
    return new SaltEfficiency(base);
  }

  @Override
  String baseUnit() {
    return "grains/lb";
  }
}

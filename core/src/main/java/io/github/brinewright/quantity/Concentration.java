package io.github.brinewright.quantity;

/** Mass of one dissolved substance in a volume of water. */
public final class Concentration extends Quantity<Concentration> {
  private Concentration(double base) {
    super(base);
  }

  /**
   * {@return a concentration of {@code value} milligrams per litre}
   *
   * @param value a finite number of milligrams per litre
   */
  public static Concentration ofMilligramsPerLitre(double value) {
    return new Concentration(value);
  }

  /** {@return the number of milligrams per litre} */
  public double milligramsPerLitre() {
    return base();
  }

  @Override
  Concentration with(double base) {
    return new Concentration(base);
  }

  @Override
  String baseUnit() {
    return "mg/L";
  }
}

package io.github.brinewright.quantity;

/** Mass of one dissolved substance in a volume of water. */
public final class Concentration extends Quantity<Concentration> {
  private Concentration(double base) {
    super(base);
  }

  /** A concentration of {@code value} milligrams per litre. */
  public static Concentration ofMilligramsPerLitre(double value) {
    return new Concentration(value);
  }

  /** The number of milligrams per litre. */
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

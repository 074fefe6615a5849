package io.github.brinewright.quantity;

/** Mass of salt used for one regeneration of a unit volume of resin. */
public final class SaltDosage extends Quantity<SaltDosage> {
  private static final double GRAM_PER_LITRE = 28.316846592 / 453.59237;

  private SaltDosage(double base) {
    super(base);
  }

  /**
   * {@return a salt dosage of {@code value} pounds of NaCl per cubic foot of resin}
   *
   * @param value a finite number of pounds of NaCl per cubic foot of resin
   */
  public static SaltDosage ofPoundsPerCubicFoot(double value) {
    return new SaltDosage(value);
  }

  /**
   * {@return a salt dosage of {@code value} grams of NaCl per litre of resin}
   *
   * @param value a finite number of grams of NaCl per litre of resin
   */
  public static SaltDosage ofGramsPerLitre(double value) {
    return new SaltDosage(value * GRAM_PER_LITRE);
  }

  /** {@return the number of pounds of NaCl per cubic foot of resin} */
  public double poundsPerCubicFoot() {
    return base();
  }

  /** {@return the number of grams of NaCl per litre of resin} */
  public double gramsPerLitre() {
    return base() / GRAM_PER_LITRE;
  }

  /**
   * {@return the salt for a bed of the given volume}
   *
   * @param resin volume of the bed
   */
  public Mass saltFor(Volume resin) {
    return Mass.ofPounds(base() * resin.cubicFeet());
  }

  @Override
  SaltDosage with(double base) {
    return new SaltDosage(base);
  }

  @Override
  String baseUnit() {
    return "lb/ft3";
  }
}

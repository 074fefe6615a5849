package io.github.brinewright.quantity;

/** Mass of salt used for one regeneration of a unit volume of resin. */
public final class SaltDosage extends Quantity<SaltDosage> {
  private static final double GRAM_PER_LITRE = 28.316846592 / 453.59237;

  private SaltDosage(double base) {
    super(base);
  }

  /** A salt dosage of {@code value} pounds of NaCl per cubic foot of resin. */
  public static SaltDosage ofPoundsPerCubicFoot(double value) {
    return new SaltDosage(value);
  }

  /** A salt dosage of {@code value} grams of NaCl per litre of resin. */
  public static SaltDosage ofGramsPerLitre(double value) {
    return new SaltDosage(value * GRAM_PER_LITRE);
  }

  /** The number of pounds of NaCl per cubic foot of resin. */
  public double poundsPerCubicFoot() {
    return base();
  }

  /** The number of grams of NaCl per litre of resin. */
  public double gramsPerLitre() {
    return base() / GRAM_PER_LITRE;
  }

  /** The salt for a bed of the given volume. */
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

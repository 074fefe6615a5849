package io.github.brinewright.quantity;

/**
 * Hardness of water, expressed as calcium carbonate.
 *
 * <p>One grain per US gallon is 64.79891 mg in 3.785411784 L, so 17.118 mg/L. One German degree is
 * 10 mg/L CaO, one English (Clark) degree one grain per imperial gallon, one French degree 10 mg/L
 * CaCO3; one mmol/L of calcium and magnesium is 100.09 mg/L CaCO3 (molar mass 100.0869 g/mol).
 */
public final class Hardness extends Quantity<Hardness> {
  static final double MG_PER_L_PER_GPG = 64.79891 / 3.785411784;
  private static final double GERMAN =
      10 * MolarMass.CALCIUM_CARBONATE / MolarMass.CALCIUM_OXIDE / MG_PER_L_PER_GPG;
  private static final double ENGLISH = 64.79891 / 4.54609 / MG_PER_L_PER_GPG;
  private static final double FRENCH = 10 / MG_PER_L_PER_GPG;
  private static final double MILLIMOLES = MolarMass.CALCIUM_CARBONATE / MG_PER_L_PER_GPG;
  private static final double MILLIGRAMS = 1 / MG_PER_L_PER_GPG;

  private Hardness(double base) {
    super(base);
  }

  /**
   * {@return a hardness of {@code value} grains per US gallon}
   *
   * @param value a finite number of grains per US gallon
   */
  public static Hardness ofGrainsPerGallon(double value) {
    return new Hardness(value);
  }

  /**
   * {@return a hardness of {@code value} milligrams per litre as CaCO3}
   *
   * @param value a finite number of milligrams per litre as CaCO3
   */
  public static Hardness ofMilligramsPerLitre(double value) {
    return new Hardness(value * MILLIGRAMS);
  }

  /**
   * {@return a hardness of {@code value} German degrees}
   *
   * @param value a finite number of German degrees
   */
  public static Hardness ofGermanDegrees(double value) {
    return new Hardness(value * GERMAN);
  }

  /**
   * {@return a hardness of {@code value} English (Clark) degrees}
   *
   * @param value a finite number of English (Clark) degrees
   */
  public static Hardness ofEnglishDegrees(double value) {
    return new Hardness(value * ENGLISH);
  }

  /**
   * {@return a hardness of {@code value} French degrees}
   *
   * @param value a finite number of French degrees
   */
  public static Hardness ofFrenchDegrees(double value) {
    return new Hardness(value * FRENCH);
  }

  /**
   * {@return a hardness of {@code value} millimoles of Ca and Mg per litre}
   *
   * @param value a finite number of millimoles of Ca and Mg per litre
   */
  public static Hardness ofMillimolesPerLitre(double value) {
    return new Hardness(value * MILLIMOLES);
  }

  /** {@return the number of grains per US gallon} */
  public double grainsPerGallon() {
    return base();
  }

  /** {@return the number of milligrams per litre as CaCO3} */
  public double milligramsPerLitre() {
    return base() / MILLIGRAMS;
  }

  /** {@return the number of German degrees} */
  public double germanDegrees() {
    return base() / GERMAN;
  }

  /** {@return the number of English (Clark) degrees} */
  public double englishDegrees() {
    return base() / ENGLISH;
  }

  /** {@return the number of French degrees} */
  public double frenchDegrees() {
    return base() / FRENCH;
  }

  /** {@return the number of millimoles of Ca and Mg per litre} */
  public double millimolesPerLitre() {
    return base() / MILLIMOLES;
  }

  /**
   * {@return the hardness amount in a volume of this water: grains per gallon times gallons}
   *
   * @param volume water of this hardness
   */
  public HardnessAmount in(Volume volume) {
    return HardnessAmount.ofGrains(base() * volume.gallons());
  }

  @Override
  Hardness with(double base) {
    return new Hardness(base);
  }

  @Override
  String baseUnit() {
    return "gpg";
  }
}

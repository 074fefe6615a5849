package io.github.brinewright.quantity;

/**
 * An amount of hardness, as grains of CaCO3: what a day brings, or what a bed holds.
 *
 * <p>One grain is 64.79891 mg; one equivalent of hardness is 50.04345 g CaCO3, so 772.29 grains.
 */
public final class HardnessAmount extends Quantity<HardnessAmount> {
  static final double GRAINS_PER_EQUIVALENT = MolarMass.CALCIUM_CARBONATE / 2 / 0.06479891;
  private static final double GRAM = 1 / 0.06479891;

  private HardnessAmount(double base) {
    super(base);
  }

  /**
   * {@return a hardness amount of {@code value} grains}
   *
   * @param value a finite number of grains
   */
  public static HardnessAmount ofGrains(double value) {
    return new HardnessAmount(value);
  }

  /**
   * {@return a hardness amount of {@code value} grams as CaCO3}
   *
   * @param value a finite number of grams as CaCO3
   */
  public static HardnessAmount ofGrams(double value) {
    return new HardnessAmount(value * GRAM);
  }

  /**
   * {@return a hardness amount of {@code value} equivalents}
   *
   * @param value a finite number of equivalents
   */
  public static HardnessAmount ofEquivalents(double value) {
    return new HardnessAmount(value * GRAINS_PER_EQUIVALENT);
  }

  /** {@return the number of grains} */
  public double grains() {
    return base();
  }

  /** {@return the number of grams as CaCO3} */
  public double grams() {
    return base() / GRAM;
  }

  /** {@return the number of equivalents} */
  public double equivalents() {
    return base() / GRAINS_PER_EQUIVALENT;
  }

  /**
   * {@return the volume of water of the given hardness that carries this amount}
   *
   * @param hardness greater than zero
   * @throws IllegalArgumentException when the hardness is zero or negative
   */
  public Volume asWaterOf(Hardness hardness) {
    Require.positive("hardness", hardness);
    return Volume.ofGallons(base() / hardness.grainsPerGallon());
  }

  /**
   * {@return the salt that removes this amount at the given efficiency}
   *
   * @param efficiency hardness removed for each mass of salt; not zero
   */
  public Mass saltAt(SaltEfficiency efficiency) {
    return Mass.ofPounds(base() / efficiency.grainsPerPound());
  }

  @Override
  HardnessAmount with(double base) {
    return new HardnessAmount(base);
  }

  @Override
  String baseUnit() {
    return "grains";
  }
}

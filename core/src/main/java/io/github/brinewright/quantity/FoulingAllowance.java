package io.github.brinewright.quantity;

/** Hardness added to the count for each mg/L of iron or manganese. */
public final class FoulingAllowance extends Quantity<FoulingAllowance> {
  private FoulingAllowance(double base) {
    super(base);
  }

  /**
   * {@return a fouling allowance of {@code value} grains per gallon for each mg/L}
   *
   * @param value a finite number of grains per gallon for each mg/L
   */
  public static FoulingAllowance ofGrainsPerGallonPerMilligramPerLitre(double value) {
    return new FoulingAllowance(value);
  }

  /** {@return the number of grains per gallon for each mg/L} */
  public double grainsPerGallonPerMilligramPerLitre() {
    return base();
  }

  /**
   * {@return the hardness to add for the given concentration}
   *
   * @param metal iron or manganese in the water
   */
  public Hardness forConcentration(Concentration metal) {
    return Hardness.ofGrainsPerGallon(base() * metal.milligramsPerLitre());
  }

  @Override
  FoulingAllowance with(double base) {
    return new FoulingAllowance(base);
  }

  @Override
  String baseUnit() {
    return "gpg per mg/L";
  }
}

package io.github.brinewright.quantity;

/** Hardness added to the count for each mg/L of iron or manganese. */
public final class FoulingAllowance extends Quantity<FoulingAllowance> {
  private FoulingAllowance(double base) {
    super(base);
  }

  /** A fouling allowance of {@code value} grains per gallon for each mg/L. */
  public static FoulingAllowance ofGrainsPerGallonPerMilligramPerLitre(double value) {
    return new FoulingAllowance(value);
  }

  /** The number of grains per gallon for each mg/L. */
  public double grainsPerGallonPerMilligramPerLitre() {
    return base();
  }

  /** The hardness to add for the given concentration. */
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

package io.github.brinewright.quantity;

/** Regeneration water per amount of hardness removed; less is better. */
public final class WaterEfficiency extends Quantity<WaterEfficiency> {
  private WaterEfficiency(double base) {
    super(base);
  }

  /**
   * {@return a water efficiency of {@code value} gallons per thousand grains}
   *
   * @param value a finite number of gallons per thousand grains
   */
  public static WaterEfficiency ofGallonsPerThousandGrains(double value) {
    return new WaterEfficiency(value);
  }

  /** {@return the number of gallons per thousand grains} */
  public double gallonsPerThousandGrains() {
    return base();
  }

  @Override
  WaterEfficiency with(double base) {
    return new WaterEfficiency(base);
  }

  @Override
  String baseUnit() {
    return "gal/1000 grains";
  }
}

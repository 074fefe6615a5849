package io.github.brinewright.quantity;

/** Cloudiness of water. */
public final class Turbidity extends Quantity<Turbidity> {
  private Turbidity(double base) {
    super(base);
  }

  /**
   * {@return a turbidity of {@code value} nephelometric turbidity units}
   *
   * @param value a finite number of nephelometric turbidity units
   */
  public static Turbidity ofNtu(double value) {
    return new Turbidity(value);
  }

  /** {@return the number of nephelometric turbidity units} */
  public double ntu() {
    return base();
  }

  @Override
  Turbidity with(double base) {
    return new Turbidity(base);
  }

  @Override
  String baseUnit() {
    return "NTU";
  }
}

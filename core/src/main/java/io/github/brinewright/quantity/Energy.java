package io.github.brinewright.quantity;

/** Electric energy. */
public final class Energy extends Quantity<Energy> {
  private Energy(double base) {
    super(base);
  }

  /**
   * {@return an energy of {@code value} kilowatt hours}
   *
   * @param value a finite number of kilowatt hours
   */
  public static Energy ofKilowattHours(double value) {
    return new Energy(value);
  }

  /** {@return the number of kilowatt hours} */
  public double kilowattHours() {
    return base();
  }

  @Override
  Energy with(double base) {
    return new Energy(base);
  }

  @Override
  String baseUnit() {
    return "kWh";
  }
}

package io.github.brinewright.quantity;

/** Electric power drawn. */
public final class Power extends Quantity<Power> {
  private Power(double base) {
    super(base);
  }

  /**
   * {@return a power of {@code value} watts}
   *
   * @param value a finite number of watts
   */
  public static Power ofWatts(double value) {
    return new Power(value);
  }

  /** {@return the number of watts} */
  public double watts() {
    return base();
  }

  /** {@return the energy used when this power is drawn for all 8,760 hours of a year} */
  public Energy throughoutYear() {
    return Energy.ofKilowattHours(base() * CalendarYear.HOURS / 1000);
  }

  @Override
  Power with(double base) {
    return new Power(base);
  }

  @Override
  String baseUnit() {
    return "W";
  }
}

package io.github.brinewright.quantity;

/** A mass of salt or resin. */
public final class Mass extends Quantity<Mass> {
  private static final double KILOGRAM = 1 / 0.45359237;

  private Mass(double base) {
    super(base);
  }

  /**
   * {@return a mass of {@code value} pounds}
   *
   * @param value a finite number of pounds
   */
  public static Mass ofPounds(double value) {
    return new Mass(value);
  }

  /**
   * {@return a mass of {@code value} kilograms}
   *
   * @param value a finite number of kilograms
   */
  public static Mass ofKilograms(double value) {
    return new Mass(value * KILOGRAM);
  }

  /** {@return the number of pounds} */
  public double pounds() {
    return base();
  }

  /** {@return the number of kilograms} */
  public double kilograms() {
    return base() / KILOGRAM;
  }

  /**
   * {@return the amount of hardness exchanged per pound, when this mass of salt regenerates {@code
   * amount}}
   *
   * @param amount hardness that the bed exchanges for this salt
   */
  public SaltEfficiency per(HardnessAmount amount) {
    return SaltEfficiency.ofGrainsPerPound(amount.grains() / base());
  }

  @Override
  Mass with(double base) {
    return new Mass(base);
  }

  @Override
  String baseUnit() {
    return "lb";
  }
}

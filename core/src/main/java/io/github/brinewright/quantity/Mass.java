package io.github.brinewright.quantity;

/** A mass of salt or resin. */
public final class Mass extends Quantity<Mass> {
  private static final double KILOGRAM = 1 / 0.45359237;

  private Mass(double base) {
    super(base);
  }

  /** A mass of {@code value} pounds. */
  public static Mass ofPounds(double value) {
    return new Mass(value);
  }

  /** A mass of {@code value} kilograms. */
  public static Mass ofKilograms(double value) {
    return new Mass(value * KILOGRAM);
  }

  /** The number of pounds. */
  public double pounds() {
    return base();
  }

  /** The number of kilograms. */
  public double kilograms() {
    return base() / KILOGRAM;
  }

  /**
   * The amount of hardness exchanged per pound, when this mass of salt regenerates {@code amount}.
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

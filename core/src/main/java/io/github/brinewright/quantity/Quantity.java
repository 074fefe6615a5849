package io.github.brinewright.quantity;

/**
 * A physical quantity: an immutable, finite number in one fixed base unit.
 *
 * <p>Two quantities of one kind can be added and compared; quantities of different kinds cannot be
 * mixed, so a mass never lands where a volume belongs.
 *
 * @param <Q> the kind itself
 */
public abstract class Quantity<Q extends Quantity<Q>> implements Comparable<Q> {
  private final double base;

  /**
   * @param base the number in the base unit
   * @throws IllegalArgumentException when {@code base} is infinite or not a number
   */
  Quantity(double base) {
    if (!Double.isFinite(base)) {
      throw new IllegalArgumentException(
          getClass().getSimpleName() + " must be a finite number, but is " + base);
    }
    this.base = base == 0 ? 0.0 : base;
  }

  /** A quantity of the same kind with another number in the base unit. */
  abstract Q with(double base);

  /** The symbol of the base unit, for {@link #toString()} and messages to developers. */
  abstract String baseUnit();

  final double base() {
    return base;
  }

  /**
   * {@return the sum of this and {@code other}}
   *
   * @param other what is added
   */
  public final Q plus(Q other) {
    return with(base + other.base());
  }

  /**
   * {@return this less {@code other}; may be negative}
   *
   * @param other what is taken off
   */
  public final Q minus(Q other) {
    return with(base - other.base());
  }

  /**
   * {@return this times a dimensionless {@code factor}}
   *
   * @param factor dimensionless; finite
   * @throws IllegalArgumentException when the product is infinite or not a number
   */
  public final Q times(double factor) {
    return with(base * factor);
  }

  /**
   * {@return this divided by a dimensionless {@code divisor}}
   *
   * @param divisor dimensionless; not zero
   * @throws IllegalArgumentException when the divisor is zero or not a number
   */
  public final Q dividedBy(double divisor) {
    return with(base / divisor);
  }

  /**
   * {@return the dimensionless ratio of this to {@code other}}
   *
   * @param other what it is compared with; not zero
   * @throws IllegalArgumentException when {@code other} is zero
   */
  public final double ratioTo(Q other) {
    if (other.base() == 0) {
      throw new IllegalArgumentException("there is no ratio of " + this + " to " + other);
    }
    return base / other.base();
  }

  /** {@return whether this is greater than zero} */
  public final boolean isPositive() {
    return base > 0;
  }

  /** {@return whether this is less than zero} */
  public final boolean isNegative() {
    return base < 0;
  }

  /**
   * {@return whether this is greater than {@code other}}
   *
   * @param other what it is compared with
   */
  public final boolean exceeds(Q other) {
    return base > other.base();
  }

  /**
   * {@return the greater of this and {@code other}}
   *
   * @param other what it is compared with
   */
  public final Q max(Q other) {
    return with(Math.max(base, other.base()));
  }

  /**
   * {@return the lesser of this and {@code other}}
   *
   * @param other what it is compared with
   */
  public final Q min(Q other) {
    return with(Math.min(base, other.base()));
  }

  @Override
  public final int compareTo(Q other) {
    return Double.compare(base, other.base());
  }

  @Override
  public final boolean equals(Object other) {
    return other != null
        && getClass() == other.getClass()
        && Double.compare(base, ((Quantity<?>) other).base) == 0;
  }

  @Override
  public final int hashCode() {
    return Double.hashCode(base);
  }

  /** The number and its base unit, for developers; people read what {@code words} writes. */
  @Override
  public final String toString() {
    return base + " " + baseUnit();
  }
}

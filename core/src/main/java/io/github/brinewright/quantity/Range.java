package io.github.brinewright.quantity;

/**
 * A result known only between two limits.
 *
 * @param low the lesser
 * @param high the greater
 * @param <Q> what it is a range of
 */
public record Range<Q extends Quantity<Q>>(Q low, Q high) {
  /** The middle of the range. */
  public Q middle() {
    return low.plus(high).dividedBy(2);
  }
}

package io.github.brinewright.quantity;

/**
 * A result known only between two limits.
 *
 * @param low the lesser
 * @param high the greater; not below {@code low}
 * @param <Q> what it is a range of
 */
public record Range<Q extends Quantity<Q>>(Q low, Q high) {
  /**
   * @param low the lesser
   * @param high the greater
   * @throws IllegalArgumentException when {@code high} is below {@code low}
   */
  public Range {
    if (low.exceeds(high)) {
      throw new IllegalArgumentException("the upper limit " + high + " is below the lower " + low);
    }
  }

  /** {@return the middle of the range} */
  public Q middle() {
    return low.plus(high).dividedBy(2);
  }
}

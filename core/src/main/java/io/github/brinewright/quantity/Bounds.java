package io.github.brinewright.quantity;

/**
 * The lowest and the highest value that is accepted, both included. A range is stated once, by the
 * type that it belongs to; constructors, readers and forms take it from there.
 *
 * @param low the lowest value accepted
 * @param high the highest value accepted; not below {@code low}
 * @param <T> what is bounded: a quantity, a number, a temperature, a time
 */
public record Bounds<T extends Comparable<? super T>>(T low, T high) {
  /**
   * @param low the lowest value accepted
   * @param high the highest value accepted
   * @throws IllegalArgumentException when {@code high} is below {@code low}
   */
  public Bounds {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "the upper bound " + high + " is below the lower bound " + low);
    }
  }

  /**
   * {@return bounds from {@code low} to {@code high}}
   *
   * @param <T> what is bounded
   * @param low the lowest value accepted
   * @param high the highest value accepted; not below {@code low}
   * @throws IllegalArgumentException when {@code high} is below {@code low}
   */
  public static <T extends Comparable<? super T>> Bounds<T> of(T low, T high) {
    return new Bounds<>(low, high);
  }

  /**
   * {@return whether {@code value} lies within; a number that is none ({@code NaN}) never does}
   *
   * @param value value to compare with both ends
   */
  public boolean holds(T value) {
    return nearest(value).equals(value);
  }

  /**
   * {@return {@code value}, or the end that is nearest to it where it lies outside}
   *
   * @param value value to compare with both ends
   */
  public T nearest(T value) {
    if (value.compareTo(low) < 0) {
      return low;
    }
    return value.compareTo(high) > 0 ? high : value;
  }

  /**
   * {@return {@code value} when it lies within}
   *
   * @param name what the value is, for the message
   * @param value value that must lie within
   * @throws IllegalArgumentException outside, with the name, the value and both ends
   */
  public T require(String name, T value) {
    if (!holds(value)) {
      throw new IllegalArgumentException(
          name + " is " + value + ", but must be from " + low + " to " + high);
    }
    return value;
  }
}

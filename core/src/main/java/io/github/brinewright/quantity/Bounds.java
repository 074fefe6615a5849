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
   * @throws IllegalArgumentException when {@code high} is below {@code low}
   */
  public Bounds {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "the upper bound " + high + " is below the lower bound " + low);
    }
  }

  /**
   * Bounds from {@code low} to {@code high}.
   *
   * @throws IllegalArgumentException when {@code high} is below {@code low}
   */
  public static <T extends Comparable<? super T>> Bounds<T> of(T low, T high) {
    return new Bounds<>(low, high);
  }

  /** Whether {@code value} lies within; a number that is none ({@code NaN}) never does. */
  public boolean holds(T value) {
    return nearest(value).equals(value);
  }

  /** {@code value}, or the end that is nearest to it where it lies outside. */
  public T nearest(T value) {
    if (value.compareTo(low) < 0) {
      return low;
    }
    return value.compareTo(high) > 0 ? high : value;
  }

  /**
   * Returns {@code value} when it lies within.
   *
   * @param name what the value is, for the message
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

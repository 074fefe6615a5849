package io.github.brinewright.quantity;

import java.util.Collection;
import java.util.List;

/** Checks of arguments; each message names the value, the limit and what was meant. */
public final class Require {
  private Require() {}

  /**
   * @param <Q> kind of the quantity
   * @param name what the value is, for the message
   * @param value must be greater than zero
   * @return {@code value}
   * @throws IllegalArgumentException when it is zero or less
   */
  public static <Q extends Quantity<Q>> Q positive(String name, Q value) {
    if (!value.isPositive()) {
      throw new IllegalArgumentException(name + " is " + value + ", but must be more than zero");
    }
    return value;
  }

  /**
   * @param <Q> kind of the quantity
   * @param name what the value is, for the message
   * @param value must be zero or more
   * @return {@code value}
   * @throws IllegalArgumentException when it is negative
   */
  public static <Q extends Quantity<Q>> Q notNegative(String name, Q value) {
    if (value.isNegative()) {
      throw new IllegalArgumentException(name + " is " + value + ", but must not be negative");
    }
    return value;
  }

  /**
   * @param name what the value is, for the message
   * @param value must lie from {@code low} to {@code high}
   * @param low the lowest value accepted
   * @param high the highest value accepted
   * @return {@code value}
   * @throws IllegalArgumentException outside {@code low} to {@code high}, or when not a number
   */
  public static double between(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " is " + value + ", but must be from " + low + " to " + high);
    }
    return value;
  }

  /**
   * @param name what the value is, for the message
   * @param value must lie from {@code low} to {@code high}
   * @param low the lowest value accepted
   * @param high the highest value accepted
   * @return {@code value}
   * @throws IllegalArgumentException outside {@code low} to {@code high}
   */
  public static int between(String name, int value, int low, int high) {
    if (value < low || value > high) {
      throw new IllegalArgumentException(
          name + " is " + value + ", but must be from " + low + " to " + high);
    }
    return value;
  }

  /**
   * @param name what the text is, for the message
   * @param text must hold more than white space
   * @return {@code text}
   * @throws IllegalArgumentException when it is empty or holds nothing but white space
   */
  public static String notBlank(String name, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(name + " is \"" + text + "\", but must not be blank");
    }
    return text;
  }

  /**
   * @param <T> what the list is of
   * @param name what the list is, for the message
   * @param values at least one
   * @return an unchangeable copy of {@code values}
   * @throws IllegalArgumentException when there is none
   */
  public static <T> List<T> someOf(String name, Collection<T> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException(name + " are " + values + ", but at least one is needed");
    }
    return List.copyOf(values);
  }
}

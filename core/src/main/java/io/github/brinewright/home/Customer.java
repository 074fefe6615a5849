package io.github.brinewright.home;

/**
 * Whose home it is.
 *
 * @param name of the customer, as it is to be printed
 * @param street and number; may be empty
 * @param town with state and post code; may be empty
 */
public record Customer(String name, String street, String town) {
  /** A home of which only a name is known. */
  public static Customer named(String name) {
    return new Customer(name, "", "");
  }
}

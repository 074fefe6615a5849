package io.github.brinewright.home;

import io.github.brinewright.quantity.Require;

/**
 * Whose home it is.
 *
 * @param name of the customer, as it is to be printed; not blank
 * @param street and number; may be empty
 * @param town with state and post code; may be empty
 */
public record Customer(String name, String street, String town) {
  /**
   * @param name of the customer, as it is to be printed
   * @param street and number
   * @param town with state and post code
   * @throws IllegalArgumentException when the name is blank
   */
  public Customer {
    Require.notBlank("customer's name", name);
  }

  /**
   * {@return a home of which only a name is known}
   *
   * @param name not blank
   * @throws IllegalArgumentException when blank
   */
  public static Customer named(String name) {
    return new Customer(name, "", "");
  }
}

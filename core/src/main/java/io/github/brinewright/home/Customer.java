package io.github.brinewright.home;

import io.github.brinewright.quantity.Require;

/**
 * Whose home it is.
 *
 * @param name of the customer, as it is to be printed; not blank
 * @param street and number; may be empty
 * @param town with state and post code; may be empty
 * @param phone number, as it is to be printed; may be empty
 * @param email address; may be empty
 */
public record Customer(String name, String street, String town, String phone, String email) {
  /**
   * @param name of the customer, as it is to be printed
   * @param street and number
   * @param town with state and post code
   * @param phone number, as it is to be printed
   * @param email address
   * @throws IllegalArgumentException when the name is blank
   */
  public Customer {
    Require.notBlank("customer's name", name);
  }

  /**
   * A customer without phone and mail.
   *
   * @param name of the customer, as it is to be printed
   * @param street and number
   * @param town with state and post code
   * @throws IllegalArgumentException when the name is blank
   */
  public Customer(String name, String street, String town) {
    this(name, street, town, "", "");
  }

  /**
   * {@return the same customer with ways to be reached}
   *
   * @param number of the phone, as it is to be printed; may be empty
   * @param address of mail; may be empty
   */
  public Customer reachedBy(String number, String address) {
    return new Customer(name, street, town, number, address);
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

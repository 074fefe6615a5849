package io.github.brinewright.home;

import io.github.brinewright.quantity.Require;

/**
 * Whose home it is.
 *
 * @param name of the customer, in any script; not blank
 * @param street and number; may be empty
 * @param town with state and post code; may be empty
 * @param phone number, as it is to be printed; may be empty
 * @param email address; may be empty
 * @param latin the name as documents print it, where they cannot print its script; may be empty
 */
public record Customer(
    String name, String street, String town, String phone, String email, String latin) {
  /**
   * @param name of the customer, in any script
   * @param street and number
   * @param town with state and post code
   * @param phone number, as it is to be printed
   * @param email address
   * @param latin the name as documents print it
   * @throws IllegalArgumentException when the name is blank
   */
  public Customer {
    Require.notBlank("customer's name", name);
  }

  /**
   * A customer without phone and mail, whose name is printed as it is.
   *
   * @param name of the customer, as it is to be printed
   * @param street and number
   * @param town with state and post code
   * @throws IllegalArgumentException when the name is blank
   */
  public Customer(String name, String street, String town) {
    this(name, street, town, "", "", "");
  }

  /**
   * {@return the same customer with ways to be reached}
   *
   * @param number of the phone, as it is to be printed; may be empty
   * @param address of mail; may be empty
   */
  public Customer reachedBy(String number, String address) {
    return new Customer(name, street, town, number, address, latin);
  }

  /**
   * {@return the same customer with a name that documents can print}
   *
   * @param other the name in letters that they can print; empty for the name itself
   */
  public Customer printedAs(String other) {
    return new Customer(name, street, town, phone, email, other);
  }

  /** {@return the name as documents print it} */
  public String printedName() {
    return latin.isEmpty() ? name : latin;
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

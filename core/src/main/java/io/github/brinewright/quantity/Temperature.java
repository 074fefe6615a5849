package io.github.brinewright.quantity;

/**
 * A temperature of water. Temperatures are compared and read, not added, so this is no {@link
 * Quantity}.
 *
 * @param celsius degrees Celsius, −273.15 or more
 */
public record Temperature(double celsius) implements Comparable<Temperature> {
  /**
   * @param celsius degrees Celsius, −273.15 or more
   * @throws IllegalArgumentException below absolute zero or when not a finite number
   */
  public Temperature {
    if (!Double.isFinite(celsius) || celsius < -273.15) {
      throw new IllegalArgumentException("a temperature of " + celsius + " °C does not exist");
    }
  }

  /**
   * {@return a temperature in degrees Celsius}
   *
   * @param degrees degrees Celsius; −273.15 or more
   */
  public static Temperature ofCelsius(double degrees) {
    return new Temperature(degrees);
  }

  /**
   * {@return a temperature in degrees Fahrenheit}
   *
   * @param degrees degrees Fahrenheit; −459.67 or more
   */
  public static Temperature ofFahrenheit(double degrees) {
    return new Temperature((degrees - 32) / 1.8);
  }

  /** {@return the temperature in degrees Fahrenheit} */
  public double fahrenheit() {
    return celsius * 1.8 + 32;
  }

  /** Degrees of both scales, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return celsius + " °C (" + fahrenheit() + " °F)";
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }
}

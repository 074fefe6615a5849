package io.github.brinewright.home;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Where a home is, so far as rules differ: a country, or a part of one. Example: {@code
 * Place.of("US-CA").isWithin(Place.US)}.
 *
 * @param code of ISO 3166: two letters of a country, and after a hyphen those of a part of it, as
 *     {@code US}, {@code US-CA}, {@code CA}, {@code CA-ON}
 */
public record Place(String code) {
  private static final Pattern FORM = Pattern.compile("[A-Z]{2}(-[A-Z0-9]{1,3})?");
  private static final int COUNTRY = 2;

  /** The United States. */
  public static final Place US = new Place("US");

  /** Canada. */
  public static final Place CANADA = new Place("CA");

  /**
   * @param code of ISO 3166: two letters of a country, and after a hyphen those of a part of it, as
   *     {@code US}, {@code US-CA}, {@code CA}, {@code CA-ON}
   * @throws IllegalArgumentException when the code has another form, or its country is none of ISO
   *     3166
   */
  public Place {
    if (!FORM.matcher(code).matches() || !isCountry(code.substring(0, COUNTRY))) {
      throw new IllegalArgumentException(
          "place is \"" + code + "\", but must be a code of ISO 3166 as US, US-CA, CA or CA-ON");
    }
  }

  private static boolean isCountry(String letters) {
    return Locale.getISOCountries(Locale.IsoCountryCode.PART1_ALPHA2).contains(letters);
  }

  /**
   * {@return a country or a part of one}
   *
   * @param code of ISO 3166
   * @throws IllegalArgumentException when it is none
   */
  public static Place of(String code) {
    return new Place(code);
  }

  /** {@return the country} */
  public Place country() {
    return of(code.substring(0, COUNTRY));
  }

  /**
   * {@return whether this is the other place or a part of it}
   *
   * @param other a country or a part of one
   */
  public boolean isWithin(Place other) {
    return equals(other) || country().equals(other);
  }
}

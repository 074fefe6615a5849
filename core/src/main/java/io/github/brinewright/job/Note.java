package io.github.brinewright.job;

import java.util.Locale;

/** What was taken from built-in defaults, or left aside, for the person at the screen. */
public enum Note {
  /** There is no units.csv: usual bed sizes stand in for the dealer's units. */
  BUILT_IN_UNITS,
  /** There is no tariffs.csv: round prices stand in for those at the address. */
  PLACEHOLDER_PRICES,
  /** payments.csv states another credit than dealer.properties, or none: it alone is offered. */
  CREDIT_OF_PAYMENTS;

  /** Key of its words. */
  String key() {
    return "note." + name().toLowerCase(Locale.ROOT);
  }
}

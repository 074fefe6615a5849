package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Site;
import java.util.Locale;
import java.util.Optional;

/**
 * A home with the prices at its address.
 *
 * @param site the home
 * @param tariff the prices
 * @param language that the people there read; the dealer's where none is named
 */
public record QuotedHome(Site site, Tariff tariff, Optional<Locale> language) {
  /** A home whose people read the dealer's language. */
  public QuotedHome(Site site, Tariff tariff) {
    this(site, tariff, Optional.empty());
  }
}

package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Site;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A home with the prices at its address. Immutable. */
public final class QuotedHome {
  private final Site site;
  private final Tariff tariff;
  private final @Nullable Locale language;

  /**
   * A home whose people read the dealer's language.
   *
   * @param site the home
   * @param tariff prices at its address
   */
  public QuotedHome(Site site, Tariff tariff) {
    this(site, tariff, null);
  }

  private QuotedHome(Site site, Tariff tariff, @Nullable Locale language) {
    this.site = site;
    this.tariff = tariff;
    this.language = language;
  }

  /**
   * {@return the same home, whose people read another language}
   *
   * @param locale of their documents; null for the dealer's
   */
  public QuotedHome reading(@Nullable Locale locale) {
    return new QuotedHome(site, tariff, locale);
  }

  /** {@return the home} */
  public Site site() {
    return site;
  }

  /** {@return the prices} */
  public Tariff tariff() {
    return tariff;
  }

  /** {@return what the people there read; empty for the dealer's language} */
  public Optional<Locale> language() {
    return Optional.ofNullable(language);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof QuotedHome home
        && site.equals(home.site)
        && tariff.equals(home.tariff)
        && Objects.equals(language, home.language);
  }

  @Override
  public int hashCode() {
    return Objects.hash(site, tariff, language);
  }

  @Override
  public String toString() {
    return "home " + site.id() + " with tariff " + tariff.id();
  }
}

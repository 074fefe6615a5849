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
  private final QuoteRecord record;

  /**
   * A home whose people read the dealer's language.
   *
   * @param site the home
   * @param tariff prices at its address
   */
  public QuotedHome(Site site, Tariff tariff) {
    this(site, tariff, null, QuoteRecord.NONE);
  }

  private QuotedHome(Site site, Tariff tariff, @Nullable Locale language, QuoteRecord record) {
    this.site = site;
    this.tariff = tariff;
    this.language = language;
    this.record = record;
  }

  /**
   * {@return the same home, whose people read another language}
   *
   * @param locale of their documents; null for the dealer's
   */
  public QuotedHome reading(@Nullable Locale locale) {
    return new QuotedHome(site, tariff, locale, record);
  }

  /**
   * {@return the same home, whose quote is known by other numbers and names}
   *
   * @param quote number, revision, who made it, and notes
   */
  public QuotedHome recorded(QuoteRecord quote) {
    return new QuotedHome(site, tariff, language, quote);
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

  /** {@return what its quote is known by; a first quote unless set} */
  public QuoteRecord record() {
    return record;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof QuotedHome home
        && site.equals(home.site)
        && tariff.equals(home.tariff)
        && Objects.equals(language, home.language)
        && record.equals(home.record);
  }

  @Override
  public int hashCode() {
    return Objects.hash(site, tariff, language, record);
  }

  @Override
  public String toString() {
    return "home " + site.id() + " with tariff " + tariff.id();
  }
}

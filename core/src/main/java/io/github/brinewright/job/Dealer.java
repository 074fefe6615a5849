package io.github.brinewright.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Who makes the proposal and how it is to look.
 *
 * @param name of the dealer
 * @param contact lines below the name: street, town, phone, mail
 * @param license license numbers, as they are to be printed; may be empty
 * @param accent colour of rules and headings, as #RRGGBB
 * @param terms text above the signature; may be empty
 * @param validDays days the offer stands; 1 to 365
 * @param currency of all prices
 * @param locale language and number formats of the documents
 * @param paper size of the page
 * @param units of the documents
 * @param logo beside the name on the first page
 */
public record Dealer(
    String name,
    List<String> contact,
    String license,
    String accent,
    String terms,
    int validDays,
    CurrencyUnit currency,
    Locale locale,
    Paper paper,
    Units units,
    Optional<Logo> logo) {
  /** Units that documents are written in. */
  public enum Units {
    US,
    METRIC
  }

  /** Paper sizes. */
  public enum Paper {
    LETTER,
    A4
  }

  /** Used where no dealer.properties was written. */
  public static final Dealer UNNAMED =
      new Dealer(
          "Your dealer",
          List.of(),
          "",
          "#1F5C66",
          "",
          30,
          CurrencyUnit.USD,
          Locale.US,
          Paper.LETTER,
          Units.US,
          Optional.empty());

  /** The same dealer writing for other readers. */
  public Dealer writing(Locale language, Paper size, Units system) {
    return new Dealer(
        name, contact, license, accent, terms, validDays, currency, language, size, system, logo);
  }

  /** Keeps its own copy of {@code contact}. */
  public Dealer {
    contact = List.copyOf(contact);
  }
}

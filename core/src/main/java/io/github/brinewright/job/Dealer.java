package io.github.brinewright.job;

import io.github.brinewright.words.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Who makes the proposal and how it is to look.
 *
 * @param name of the dealer
 * @param contact lines below the name: street, town, phone, mail
 * @param license license numbers, as they are to be printed; may be empty
 * @param accent colour of rules and headings, as #RRGGBB
 * @param anyTerms text above the signature where its language has none of its own; may be empty
 * @param termsByLanguage the same by code of the language
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
    String anyTerms,
    Map<String, String> termsByLanguage,
    int validDays,
    CurrencyUnit currency,
    Locale locale,
    Paper paper,
    UnitSystem units,
    Optional<Logo> logo) {
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
          Map.of(),
          30,
          CurrencyUnit.USD,
          Locale.US,
          Paper.LETTER,
          UnitSystem.US,
          Optional.empty());

  /** The same dealer writing for other readers. */
  public Dealer writing(Locale language, Paper size, UnitSystem system) {
    return new Dealer(
        name,
        contact,
        license,
        accent,
        anyTerms,
        termsByLanguage,
        validDays,
        currency,
        language,
        size,
        system,
        logo);
  }

  /** The same dealer writing in another language. */
  public Dealer writing(Locale language) {
    return writing(language, paper, units);
  }

  /**
   * Text above the signature, in the language of the documents where there is one; may be empty.
   */
  public String terms() {
    return termsByLanguage.getOrDefault(locale.getLanguage(), anyTerms);
  }

  /** Keeps its own copies of the collections. */
  public Dealer {
    contact = List.copyOf(contact);
    termsByLanguage = Map.copyOf(termsByLanguage);
  }
}

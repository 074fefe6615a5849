package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.home.Place;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.sale.HomeSale;
import io.github.brinewright.words.UnitSystem;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Who makes the documents and how they are to look. Immutable.
 *
 * <pre>{@code
 * Dealer dealer =
 *     Dealer.named("Weir Street Water")
 *         .contact(List.of("6 Weir Street", "555-0142"))
 *         .accent("#1F5C66")
 *         .build();
 * }</pre>
 */
public final class Dealer {
  /** Paper sizes. */
  public enum Paper {
    /** 8.5 by 11 inches. */
    LETTER,
    /** 210 by 297 mm. */
    A4
  }

  /** Used where no dealer is named. */
  public static final Dealer UNNAMED = named("Your dealer").build();

  private final Builder set;

  private Dealer(Builder builder) {
    set = builder;
  }

  /**
   * A dealer with US dollars, English, letter paper and US units, whose offers stand 30 days.
   *
   * @param name as it is printed
   * @return a builder of the dealer
   */
  public static Builder named(String name) {
    return new Builder(name);
  }

  /** {@return a builder that begins with all that this dealer has} */
  public Builder change() {
    return set.clone();
  }

  /**
   * {@return the same dealer writing for other readers}
   *
   * @param language language and number formats of the documents
   * @param size of the page
   * @param system units of the documents
   */
  public Dealer writing(Locale language, Paper size, UnitSystem system) {
    return change().locale(language).paper(size).units(system).build();
  }

  /**
   * {@return the same dealer writing in another language}
   *
   * @param language language and number formats of the documents
   */
  public Dealer writing(Locale language) {
    return change().locale(language).build();
  }

  /** {@return the name as it is printed} */
  public String name() {
    return set.name;
  }

  /** {@return the lines below the name: street, town, phone, mail} */
  public List<String> contact() {
    return set.contact;
  }

  /** {@return the license numbers, as they are printed; may be empty} */
  public String license() {
    return set.license;
  }

  /** {@return the colour of rules and headings, as #RRGGBB} */
  public String accent() {
    return set.accent;
  }

  /**
   * {@return the text above the signature, in the language of the documents where there is one; may
   * be empty}
   */
  public String terms() {
    return set.termsByLanguage.getOrDefault(set.locale.getLanguage(), set.anyTerms);
  }

  /** {@return the text above the signature where a language has none of its own; may be empty} */
  public String anyTerms() {
    return set.anyTerms;
  }

  /** {@return the text above the signature by code of the language} */
  public Map<String, String> termsByLanguage() {
    return set.termsByLanguage;
  }

  /**
   * {@return what is said of every offer, in the language of the documents where there is a text in
   * it; may be empty}
   *
   * @param kind of what is said
   */
  public String offerText(OfferText kind) {
    return offerTexts(kind).in(set.locale);
  }

  /**
   * {@return what is said of every offer, in all languages; may be empty}
   *
   * @param kind of what is said
   */
  public LocalText offerTexts(OfferText kind) {
    return set.offerTexts.getOrDefault(kind, LocalText.NONE);
  }

  /** {@return how many days an offer stands} */
  public int validDays() {
    return set.validDays;
  }

  /** {@return the currency of all prices} */
  public CurrencyUnit currency() {
    return set.currency;
  }

  /** {@return the language and number formats of the documents} */
  public Locale locale() {
    return set.locale;
  }

  /** {@return where homes are that name no place of their own} */
  public Place place() {
    return set.place;
  }

  /** {@return the size of the page} */
  public Paper paper() {
    return set.paper;
  }

  /** {@return the units of the documents} */
  public UnitSystem units() {
    return set.units;
  }

  /** {@return whether proposals print the figures behind them after the signature} */
  public boolean appendix() {
    return set.appendix;
  }

  /** {@return how proposals are signed at homes} */
  public HomeSale homeSale() {
    return set.homeSale;
  }

  /** {@return the picture beside the name on the first page} */
  public Optional<Logo> logo() {
    return Optional.ofNullable(set.logo);
  }

  /** {@return the dealer's own pages, printed after the signature; three at most} */
  public List<OwnPage> pages() {
    return set.pages;
  }

  /** {@return all pictures: the logo and those of the dealer's own pages} */
  List<Logo> pictures() {
    return Stream.concat(logo().stream(), pages().stream().flatMap(page -> page.drawn().stream()))
        .toList();
  }

  /** {@return what work on a softener that is already there costs, so far as it is stated} */
  public ServicePrices servicePrices() {
    return set.servicePrices;
  }

  /** {@return the price of a meter put on a softener that is there; empty when none is stated} */
  public Optional<Money> meterRetrofit() {
    return set.servicePrices.meter();
  }

  /** {@return the price of a visit that sets a softener; empty when none is stated} */
  public Optional<Money> serviceVisit() {
    return set.servicePrices.visit();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Dealer dealer && set.parts().equals(dealer.set.parts());
  }

  @Override
  public int hashCode() {
    return set.parts().hashCode();
  }

  @Override
  public String toString() {
    return set.name + " (" + set.locale.toLanguageTag() + ", " + set.currency + ")";
  }

  /** Collects a dealer. */
  public static final class Builder implements Cloneable {
    private String name;
    private List<String> contact = List.of();
    private String license = "";
    private String accent = "#1F5C66";
    private String anyTerms = "";
    private Map<String, String> termsByLanguage = Map.of();
    private Map<OfferText, LocalText> offerTexts = Map.of();
    private int validDays = 30;
    private CurrencyUnit currency = CurrencyUnit.USD;
    private Locale locale = Locale.US;
    private Place place = Place.US;
    private Paper paper = Paper.LETTER;
    private UnitSystem units = UnitSystem.US;
    private boolean appendix = true;
    private HomeSale homeSale = HomeSale.USUAL;
    private @Nullable Logo logo;
    private List<OwnPage> pages = List.of();
    private ServicePrices servicePrices = ServicePrices.NONE;

    private Builder(String name) {
      this.name = name;
    }

    /**
     * Name as it is printed.
     *
     * @param printed the name
     * @return this builder
     */
    public Builder name(String printed) {
      name = printed;
      return this;
    }

    /**
     * Lines below the name; none unless set.
     *
     * @param lines street, town, phone, mail; one string for each line
     * @return this builder
     */
    public Builder contact(List<String> lines) {
      contact = List.copyOf(lines);
      return this;
    }

    /**
     * License numbers; none unless set.
     *
     * @param numbers as they are printed; empty for none
     * @return this builder
     */
    public Builder license(String numbers) {
      license = numbers;
      return this;
    }

    /**
     * Colour of rules and headings; a dark teal unless set.
     *
     * @param colour as #RRGGBB; one too light to be read is darkened in documents
     * @return this builder
     * @throws IllegalArgumentException when it is no colour
     */
    public Builder accent(String colour) {
      if (!Formats.isColour(colour)) {
        throw new IllegalArgumentException("accent is " + colour + ", but must be as #1F5C66");
      }
      accent = colour;
      return this;
    }

    /**
     * Text above the signature where a language has none of its own; none unless set.
     *
     * @param text as it is printed; empty for none
     * @return this builder
     */
    public Builder terms(String text) {
      anyTerms = text;
      return this;
    }

    /**
     * Text above the signature of documents in a language.
     *
     * @param language of which only the language counts, not the country
     * @param text as it is printed in that language
     * @return this builder
     */
    public Builder terms(Locale language, String text) {
      Map<String, String> more = new TreeMap<>(termsByLanguage);
      more.put(language.getLanguage(), text);
      termsByLanguage = Map.copyOf(more);
      return this;
    }

    /**
     * What is said of every offer beside its price; nothing unless set.
     *
     * @param kind of what is said
     * @param text as it is printed, in one language or in several
     * @return this builder
     */
    public Builder offerText(OfferText kind, LocalText text) {
      Map<OfferText, LocalText> more = new EnumMap<>(OfferText.class);
      more.putAll(offerTexts);
      more.put(kind, text);
      offerTexts = Map.copyOf(more);
      return this;
    }

    /**
     * Days that an offer stands; 30 unless set.
     *
     * @param days 1 to 365
     * @return this builder
     */
    public Builder validDays(int days) {
      validDays = Require.between("valid days", days, 1, 365);
      return this;
    }

    /**
     * Currency of all prices; US dollars unless set.
     *
     * @param unit of the offers and the tariffs
     * @return this builder
     */
    public Builder currency(CurrencyUnit unit) {
      currency = unit;
      return this;
    }

    /**
     * Language and number formats of the documents; US English unless set.
     *
     * @param language as in {@code Locale.FRENCH}, or with a country
     * @return this builder
     */
    public Builder locale(Locale language) {
      locale = language;
      return this;
    }

    /**
     * Where homes are that name no place of their own; the United States unless set.
     *
     * @param usual place of such homes
     * @return this builder
     */
    public Builder place(Place usual) {
      place = usual;
      return this;
    }

    /**
     * Size of the page; letter unless set.
     *
     * @param size of all documents
     * @return this builder
     */
    public Builder paper(Paper size) {
      paper = size;
      return this;
    }

    /**
     * Units of the documents; US unless set.
     *
     * @param system of all documents
     * @return this builder
     */
    public Builder units(UnitSystem system) {
      units = system;
      return this;
    }

    /**
     * Whether proposals print the figures behind them after the signature; they do unless set.
     *
     * @param printed false to leave them out; the data that a proposal carries have them all the
     *     same
     * @return this builder
     */
    public Builder appendix(boolean printed) {
      appendix = printed;
      return this;
    }

    /**
     * How proposals are signed at homes; at the home, without a word on forms, unless set.
     *
     * @param sale at the home or not, whether the forms of cancellation are attached, and own
     *     statements
     * @return this builder
     */
    public Builder homeSale(HomeSale sale) {
      homeSale = sale;
      return this;
    }

    /**
     * Picture beside the name; none unless set.
     *
     * @param picture printed on the first page
     * @return this builder
     */
    public Builder logo(Logo picture) {
      logo = picture;
      return this;
    }

    /**
     * The dealer's own pages; none unless set.
     *
     * @param own printed after the signature, in their order; three at most
     * @return this builder
     * @throws IllegalArgumentException when there are more
     */
    public Builder pages(List<OwnPage> own) {
      Require.between("own pages", own.size(), 0, OwnPage.MOST);
      pages = List.copyOf(own);
      return this;
    }

    /**
     * What work on a softener that is already there costs; not stated unless set.
     *
     * @param prices in the dealer's currency
     * @return this builder
     */
    public Builder servicePrices(ServicePrices prices) {
      servicePrices = prices;
      return this;
    }

    /**
     * {@return the finished dealer; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when the prices of service are in another currency, or two
     *     pictures have one name
     */
    public Dealer build() {
      servicePrices.currency().filter(other -> !other.equals(currency)).ifPresent(this::refuse);
      Dealer dealer = new Dealer(clone());
      requireNames(dealer.pictures());
      return dealer;
    }

    private static void requireNames(List<Logo> pictures) {
      Map<String, Logo> byName = new TreeMap<>();
      for (Logo picture : pictures) {
        if (!picture.equals(byName.getOrDefault(picture.file(), picture))) {
          throw new IllegalArgumentException(
              "two pictures have the name \"" + picture.file() + "\"");
        }
        byName.put(picture.file(), picture);
      }
    }

    private void refuse(CurrencyUnit other) {
      throw new IllegalArgumentException(
          "prices of service are in "
              + other
              + ", but the dealer's currency is "
              + currency
              + "; use one currency throughout");
    }

    private List<Object> parts() {
      return List.of(
          name,
          contact,
          license,
          accent,
          anyTerms,
          termsByLanguage,
          offerTexts,
          validDays,
          currency,
          locale,
          place,
          paper,
          units,
          appendix,
          homeSale,
          servicePrices,
          pages,
          Objects.requireNonNullElse(logo, ""));
    }

    @Override
    protected Builder clone() {
      try {
        return (Builder) super.clone();
      } catch (CloneNotSupportedException impossible) {
        throw new AssertionError(impossible);
      }
    }
  }
}

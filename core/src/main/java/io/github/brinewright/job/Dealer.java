package io.github.brinewright.job;

import io.github.brinewright.home.Place;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.words.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
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
   */
  public static Builder named(String name) {
    return new Builder(name);
  }

  /** A builder that begins with all that this dealer has. */
  public Builder change() {
    return set.clone();
  }

  /** The same dealer writing for other readers. */
  public Dealer writing(Locale language, Paper size, UnitSystem system) {
    return change().locale(language).paper(size).units(system).build();
  }

  /** The same dealer writing in another language. */
  public Dealer writing(Locale language) {
    return change().locale(language).build();
  }

  /** Name as it is printed. */
  public String name() {
    return set.name;
  }

  /** Lines below the name: street, town, phone, mail. */
  public List<String> contact() {
    return set.contact;
  }

  /** License numbers, as they are printed; may be empty. */
  public String license() {
    return set.license;
  }

  /** Colour of rules and headings, as #RRGGBB. */
  public String accent() {
    return set.accent;
  }

  /**
   * Text above the signature, in the language of the documents where there is one; may be empty.
   */
  public String terms() {
    return set.termsByLanguage.getOrDefault(set.locale.getLanguage(), set.anyTerms);
  }

  /** Text above the signature where a language has none of its own; may be empty. */
  public String anyTerms() {
    return set.anyTerms;
  }

  /** Text above the signature by code of the language. */
  public Map<String, String> termsByLanguage() {
    return set.termsByLanguage;
  }

  /** Days that an offer stands. */
  public int validDays() {
    return set.validDays;
  }

  /** Currency of all prices. */
  public CurrencyUnit currency() {
    return set.currency;
  }

  /** Language and number formats of the documents. */
  public Locale locale() {
    return set.locale;
  }

  /** Where homes are that name no place of their own. */
  public Place place() {
    return set.place;
  }

  /** Size of the page. */
  public Paper paper() {
    return set.paper;
  }

  /** Units of the documents. */
  public UnitSystem units() {
    return set.units;
  }

  /** Picture beside the name on the first page. */
  public Optional<Logo> logo() {
    return Optional.ofNullable(set.logo);
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
    private int validDays = 30;
    private CurrencyUnit currency = CurrencyUnit.USD;
    private Locale locale = Locale.US;
    private Place place = Place.US;
    private Paper paper = Paper.LETTER;
    private UnitSystem units = UnitSystem.US;
    private @Nullable Logo logo;

    private Builder(String name) {
      this.name = name;
    }

    /** Name as it is printed. */
    public Builder name(String printed) {
      name = printed;
      return this;
    }

    /** Lines below the name; none unless set. */
    public Builder contact(List<String> lines) {
      contact = List.copyOf(lines);
      return this;
    }

    /** License numbers; none unless set. */
    public Builder license(String numbers) {
      license = numbers;
      return this;
    }

    /**
     * Colour of rules and headings; a dark teal unless set.
     *
     * @param colour as #RRGGBB; one too light to be read is darkened in documents
     * @throws IllegalArgumentException when it is no colour
     */
    public Builder accent(String colour) {
      if (!Formats.isColour(colour)) {
        throw new IllegalArgumentException("accent is " + colour + ", but must be as #1F5C66");
      }
      accent = colour;
      return this;
    }

    /** Text above the signature where a language has none of its own; none unless set. */
    public Builder terms(String text) {
      anyTerms = text;
      return this;
    }

    /** Text above the signature of documents in a language. */
    public Builder terms(Locale language, String text) {
      Map<String, String> more = new TreeMap<>(termsByLanguage);
      more.put(language.getLanguage(), text);
      termsByLanguage = Map.copyOf(more);
      return this;
    }

    /**
     * Days that an offer stands; 30 unless set.
     *
     * @param days 1 to 365
     */
    public Builder validDays(int days) {
      validDays = Require.between("valid days", days, 1, 365);
      return this;
    }

    /** Currency of all prices; US dollars unless set. */
    public Builder currency(CurrencyUnit unit) {
      currency = unit;
      return this;
    }

    /** Language and number formats of the documents; US English unless set. */
    public Builder locale(Locale language) {
      locale = language;
      return this;
    }

    /** Where homes are that name no place of their own; the United States unless set. */
    public Builder place(Place usual) {
      place = usual;
      return this;
    }

    /** Size of the page; letter unless set. */
    public Builder paper(Paper size) {
      paper = size;
      return this;
    }

    /** Units of the documents; US unless set. */
    public Builder units(UnitSystem system) {
      units = system;
      return this;
    }

    /** Picture beside the name; none unless set. */
    public Builder logo(Logo picture) {
      logo = picture;
      return this;
    }

    /** The finished dealer; later calls of this builder do not change it. */
    public Dealer build() {
      return new Dealer(clone());
    }

    private List<Object> parts() {
      return List.of(
          name,
          contact,
          license,
          accent,
          anyTerms,
          termsByLanguage,
          validDays,
          currency,
          locale,
          place,
          paper,
          units,
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

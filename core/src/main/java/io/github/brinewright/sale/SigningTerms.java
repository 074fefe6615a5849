package io.github.brinewright.sale;

import io.github.brinewright.home.Place;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What the rules of a place ask of a proposal that is signed. A sale at home in a place with a
 * right to cancel has a place to sign only where the dealer says that the forms are attached, and
 * only in a language that the statement of that right is at hand in. Immutable.
 *
 * <pre>{@code
 * SigningTerms terms = SigningTerms.of(site.place(), HomeSale.USUAL, Locale.US, LocalDate.now());
 * if (terms.obstacle().isPresent()) {
 *   System.out.println("a quote without a place to sign");
 * }
 * }</pre>
 */
public final class SigningTerms {
  /** Why there is no place to sign. */
  public enum Obstacle {
    /** The dealer has not said that the forms of cancellation are attached. */
    FORMS_NOT_ATTACHED,
    /** The statement of the right to cancel is not at hand in the language of the sale. */
    NO_STATEMENT
  }

  /**
   * A sentence that stands beside the signature.
   *
   * @param text as it is prescribed, or as the dealer's counsel words it
   * @param citation where it is asked for
   */
  public record Statement(String text, String citation) {}

  private final List<PlaceRule> rules;
  private final HomeSale sale;
  private final String language;
  private final Place place;
  private final LocalDate date;

  private SigningTerms(
      List<PlaceRule> rules, HomeSale sale, String language, Place place, LocalDate date) {
    this.rules = rules;
    this.sale = sale;
    this.language = language;
    this.place = place;
    this.date = date;
  }

  /**
   * {@return what the rules that come with the library ask for}
   *
   * @param place where the home is
   * @param sale how it is sold
   * @param locale language of the sale
   * @param date of the document
   */
  public static SigningTerms of(Place place, HomeSale sale, Locale locale, LocalDate date) {
    return new SigningTerms(PlaceRule.SHIPPED, sale, locale.getLanguage(), place, date);
  }

  /**
   * {@return the same with other rules}
   *
   * @param others in place of those that come with the library
   */
  public SigningTerms with(List<PlaceRule> others) {
    return new SigningTerms(List.copyOf(others), sale, language, place, date);
  }

  private Optional<PlaceRule> rule(PlaceRule.Kind kind) {
    return rules.stream().filter(rule -> rule.holds(place, kind)).findFirst();
  }

  private Optional<PlaceRule> cancellation() {
    return rule(PlaceRule.Kind.CANCELLATION).filter(rule -> sale.atHome());
  }

  /** {@return why there is no place to sign; empty where there may be one} */
  public Optional<Obstacle> obstacle() {
    if (cancellation().isEmpty()) {
      return Optional.empty();
    }
    if (!sale.formsAttached()) {
      return Optional.of(Obstacle.FORMS_NOT_ATTACHED);
    }
    return statement().isPresent() ? Optional.empty() : Optional.of(Obstacle.NO_STATEMENT);
  }

  /** {@return the citation of the right to cancel; empty where no rule of ours gives one} */
  public Optional<String> cancellationRule() {
    return cancellation().map(PlaceRule::citation);
  }

  /** {@return the statement beside the signature; empty where none is asked for or at hand} */
  public Optional<Statement> statement() {
    return cancellation()
        .flatMap(rule -> sentence(rule).map(text -> new Statement(text, rule.citation())));
  }

  private Optional<String> sentence(PlaceRule rule) {
    return Optional.ofNullable(sale.statement().byLanguage().get(language))
        .or(() -> Optional.of(rule.sentence()).filter(text -> rule.language().equals(language)));
  }

  /**
   * {@return the rules that are to be compared with their texts again before the date of the
   * document}
   */
  public List<PlaceRule> outdated() {
    return rules.stream()
        .filter(rule -> place.isWithin(rule.place()) && !date.isBefore(rule.checkAgain()))
        .toList();
  }

  /**
   * {@return the most that may be asked for with the signature; empty where no rule of ours says}
   * Example: a price of 1,525.00 in California → 152.50. Source: Business and Professions Code
   * 7159.5(a)(3).
   *
   * @param price with tax
   */
  public Optional<Money> highestDeposit(Money price) {
    return rule(PlaceRule.Kind.DEPOSIT).map(rule -> highest(rule, price));
  }

  private static Money highest(PlaceRule rule, Money price) {
    Money share =
        rule.share() == null ? price : price.multipliedBy(rule.share(), RoundingMode.DOWN);
    if (rule.most() == null) {
      return share;
    }
    Money most = Money.of(price.getCurrencyUnit(), rule.most());
    return most.isLessThan(share) ? most : share;
  }

  /**
   * Sees that a deposit keeps to the rule of the place.
   *
   * @param price with tax
   * @param deposit asked for with the signature
   * @throws IllegalArgumentException when it is above what the rule allows: value, limit, source
   *     and what to do
   */
  public void requireDeposit(Money price, Money deposit) {
    highestDeposit(price)
        .filter(deposit::isGreaterThan)
        .ifPresent(
            most -> {
              throw new IllegalArgumentException(
                  "a deposit of "
                      + deposit
                      + " on a price of "
                      + price
                      + " is above the "
                      + most
                      + " that "
                      + rule(PlaceRule.Kind.DEPOSIT).orElseThrow().citation()
                      + " allows in "
                      + place.code()
                      + "; lower deposit_percent");
            });
  }
}

package io.github.brinewright.sale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.cost.LocalText;
import io.github.brinewright.home.Place;
import io.github.brinewright.sale.SigningTerms.Obstacle;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Against 16 CFR 429.1(a) and California's Business and Professions Code 7159.5(a)(3). */
class SigningTermsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final Locale SPANISH = Locale.forLanguageTag("es-US");

  private static SigningTerms terms(String place, HomeSale sale, Locale locale) {
    return SigningTerms.of(Place.of(place), sale, locale, DAY);
  }

  @Test
  void aSaleAtHomeNeedsTheDealersWordThatTheFormsAreAttached() {
    HomeSale attached = new HomeSale(true, true, LocalText.NONE);

    assertThat(terms("US-TX", HomeSale.USUAL, Locale.US).obstacle())
        .contains(Obstacle.FORMS_NOT_ATTACHED);
    assertThat(terms("US-TX", attached, Locale.US).obstacle()).isEmpty();
    assertThat(terms("US", new HomeSale(false, false, LocalText.NONE), Locale.US).obstacle())
        .as("signed at the dealer's place")
        .isEmpty();
    assertThat(terms("CA-ON", HomeSale.USUAL, Locale.CANADA).obstacle())
        .as("no rule of ours")
        .isEmpty();
  }

  @Test
  void theStatementIsThatOfTheRuleWordForWordInItsLanguageAlone() {
    HomeSale attached = new HomeSale(true, true, LocalText.NONE);
    HomeSale worded = new HomeSale(true, true, LocalText.NONE.with("es", "Usted puede cancelar."));

    assertThat(terms("US", attached, Locale.US).statement().orElseThrow())
        .isEqualTo(
            new SigningTerms.Statement(
                "You, the buyer, may cancel this transaction at any time prior to midnight of the"
                    + " third business day after the date of this transaction. See the attached"
                    + " notice of cancellation form for an explanation of this right.",
                "16 CFR 429.1(a)"));
    assertThat(terms("US", attached, SPANISH).obstacle()).contains(Obstacle.NO_STATEMENT);
    assertThat(terms("US", worded, SPANISH).statement().orElseThrow().text())
        .isEqualTo("Usted puede cancelar.");
  }

  /** The lesser of 1,000 dollars and a tenth of the price. */
  @Test
  void aDepositInCaliforniaIsATenthOrAThousandDollarsAtMost() {
    SigningTerms terms = terms("US-CA", HomeSale.USUAL, Locale.US);
    Money price = Money.parse("USD 1525.00");

    assertThat(terms.highestDeposit(price)).contains(Money.parse("USD 152.50"));
    assertThat(terms.highestDeposit(Money.parse("USD 12000"))).contains(Money.parse("USD 1000.00"));
    assertThat(terms("US-NV", HomeSale.USUAL, Locale.US).highestDeposit(price)).isEmpty();
    assertThatCode(() -> terms.requireDeposit(price, Money.parse("USD 152.50")))
        .doesNotThrowAnyException();
    assertThatThrownBy(() -> terms.requireDeposit(price, Money.parse("USD 152.51")))
        .hasMessageContaining("USD 152.51", "USD 152.50")
        .hasMessageContaining("7159.5")
        .hasMessageContaining("deposit_percent");
  }

  @Test
  void aRuleThatWasNotComparedForLongIsNamed() {
    LocalDate later = PlaceRule.SHIPPED.get(0).checkAgain();
    SigningTerms terms = SigningTerms.of(Place.US, HomeSale.USUAL, Locale.US, later);

    assertThat(terms.outdated()).containsExactly(PlaceRule.SHIPPED.get(0));
    assertThat(terms("US", HomeSale.USUAL, Locale.US).outdated()).isEmpty();
    assertThat(terms.with(List.of()).outdated()).isEmpty();
  }
}

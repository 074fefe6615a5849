package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Reason.Kind;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Of costs that are printed alike none is called the lower one by an amount. */
class PrintedAlikeTest {
  private static final Money ONE = Money.parse("KWD 201.4");
  private static final Money OTHER = Money.parse("KWD 198.6");

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"LOWEST_COST", "LOWEST_RUNNING_COST", "LOWEST_COST_NARROWLY"})
  void aLeadThatIsNotPrintedIsNoAmount(Kind kind) {
    Reason reason =
        Reason.of(
            kind,
            Figure.of(3),
            Figure.of(10),
            Figure.about(ONE),
            Figure.apart(ONE, OTHER),
            Figure.of("the next"));

    assertThat(english(reason)).contains("practically level").doesNotContain("KWD0");
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"CHEAPER_TO_BUY", "DEARER_TO_BUY", "SAME_TO_BUY", "LEVEL_BUT_DEARER_TO_BUY"})
  void noUnitIsDearerByNothing(Kind kind) {
    Reason reason =
        Reason.of(
            kind,
            Figure.of(Money.parse("KWD 20")),
            Figure.apart(ONE, OTHER),
            Figure.of(10),
            Figure.days(5, 1),
            Figure.days(6, 1));

    assertThat(english(reason)).contains("10 years").doesNotContain("KWD0");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void whatIsApartAsPrintedIsAnAmount(String language) {
    Reason reason =
        Reason.of(
            Kind.DEARER_TO_BUY,
            Figure.of(Money.parse("USD 20")),
            Figure.apart(Money.parse("USD 2524"), Money.parse("USD 2478")),
            Figure.of(10),
            Figure.days(5, 1),
            Figure.days(6, 1));

    assertThat(Wording.of(Locale.forLanguageTag(language), UnitSystem.US).reason(reason))
        .contains("40");
  }

  private static String english(Reason reason) {
    return Wording.of(Locale.US, UnitSystem.US).reason(reason).replaceAll("\\h", " ");
  }
}

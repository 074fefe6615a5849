package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts of an embedder, further languages, and the two forms of a text that counts. */
class TextsTest {
  private static Wording words(Locale locale, Texts... own) {
    return Wording.of(locale, UnitSystem.US, own);
  }

  private static Texts german() {
    return Texts.of(Locale.GERMAN, Texts.library().in(Locale.US));
  }

  @Test
  void anOwnTextReplacesOursInItsLanguageAlone() {
    Texts own = Texts.of(Locale.ENGLISH, Map.of("term.Control.CLOCK", "by the clock"));

    assertThat(words(Locale.US, own).term(Control.CLOCK)).isEqualTo("by the clock");
    assertThat(words(Locale.CANADA_FRENCH, own).term(Control.CLOCK)).isEqualTo("minuterie");
  }

  @Test
  void theLaterOfTwoOwnTextsCounts() {
    Texts all = Texts.of(Locale.ENGLISH, Map.of("term.Control.CLOCK", "everywhere"));
    Texts canadian = Texts.of(Locale.CANADA, Map.of("term.Control.CLOCK", "in Canada"));

    assertThat(words(Locale.CANADA, all, canadian).term(Control.CLOCK)).isEqualTo("in Canada");
    assertThat(words(Locale.US, all, canadian).term(Control.CLOCK)).isEqualTo("everywhere");
  }

  @Test
  void aFurtherLanguageNeedsEveryText() {
    Map<String, String> incomplete = new HashMap<>(Texts.library().in(Locale.US));
    incomplete.keySet().removeAll(List.of("unit.gpg", "term.Control.CLOCK"));

    assertThatThrownBy(() -> words(Locale.GERMANY, Texts.of(Locale.GERMAN, incomplete)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("in German for 2 keys")
        .hasMessageContaining("term.Control.CLOCK, unit.gpg");
    assertThat(words(Locale.GERMANY, german()).term(Control.CLOCK)).isEqualTo("clock");
  }

  @Test
  void aLanguageWithoutTextsIsRefused() {
    assertThatThrownBy(() -> words(Locale.GERMANY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("unit.gpg");
  }

  @Test
  void anAddedKeyNeedsATextInTheLanguageInUse() {
    Texts added = Texts.of(Locale.ENGLISH, Map.of("warranty.heading", "Warranty"));

    assertThat(words(Locale.US, added).text("warranty.heading")).isEqualTo("Warranty");
    assertThatThrownBy(() -> words(Locale.CANADA_FRENCH, added))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("warranty.heading");
  }

  @ParameterizedTest
  @CsvSource({"{1} gpg", "{} gpg", "{gpg", "{x} gpg"})
  void anOwnTextThatCannotBeFilledIsRefused(String text) {
    assertThatThrownBy(() -> words(Locale.US, Texts.of(Locale.US, Map.of("unit.gpg", text))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(text);
  }

  /** Unicode Common Locale Data Repository, plurals.xml: its samples of the category "one". */
  @ParameterizedTest
  @CsvSource({
    "en-US, 1, 0, 1 day",
    "en-US, 1, 1, 1.0 days",
    "en-US, 1.2, 0, 1 day",
    "en-US, 0, 0, 0 days",
    "en-US, 5, 0, 5 days",
    "es-US, 1, 1, 1.0 día",
    "es-US, 1.5, 1, 1.5 días",
    "es-US, 0, 0, 0 días",
    "fr-CA, 0, 0, 0 jour",
    "fr-CA, 1.5, 1, '1,5 jour'",
    "fr-CA, 1.94, 1, '1,9 jour'",
    "fr-CA, 1.96, 1, '2,0 jours'",
    "fr-CA, 2, 0, 2 jours"
  })
  void aCountTakesTheFormOfItsLanguage(String tag, double days, int decimals, String printed) {
    Wording words = words(Locale.forLanguageTag(tag));
    assertThat(words.figure(Figure.days(days, decimals)).replace('\u00A0', ' ')).isEqualTo(printed);
  }

  @Test
  void anyTextMayHaveTwoForms() {
    Texts own =
        Texts.of(
            Locale.ENGLISH,
            Map.of("visits.one", "{0} visit to {1}", "visits.other", "{0} visits to {1}"));
    Wording words = words(Locale.US, own);

    assertThat(words.text("visits", Figure.of(1), Figure.of("you"))).isEqualTo("1 visit to you");
    assertThat(words.text("visits", Figure.of(3), Figure.of("you"))).isEqualTo("3 visits to you");
  }

  /** What differs between versions of Java is ours: Unicode Common Locale Data Repository 47. */
  @ParameterizedTest
  @CsvSource({"en-US, 25%, '$1,234.50'", "es-US, 25%, 'CAD1,234.50'", "fr-CA, 25 %, '1 234,50 $'"})
  void sharesAndMoneyAreWrittenTheSameByEveryJava(String tag, String share, String money) {
    Wording words = words(Locale.forLanguageTag(tag));
    Money amount = Money.parse((tag.equals("en-US") ? "USD" : "CAD") + " 1234.5");

    assertThat(words.figure(Figure.percent(0.25))).isEqualTo(share.replace(' ', '\u00A0'));
    assertThat(words.figure(Figure.of(amount)).replace('\u00A0', ' ')).isEqualTo(money);
  }

  @Test
  void severalThreadsMayShareAWording() {
    Wording words = words(Locale.US);
    List<String> expected = IntStream.range(0, 6).mapToObj(i -> words.number(2.0 / 3, i)).toList();

    long wrong =
        IntStream.range(0, 200_000)
            .parallel()
            .filter(i -> !words.number(2.0 / 3, i % 6).equals(expected.get(i % 6)))
            .count();
    assertThat(wrong).isZero();
  }

  @Test
  void textsAreFoundWhateverTheThreadsClassLoader() {
    Thread thread = Thread.currentThread();
    ClassLoader usual = thread.getContextClassLoader();
    thread.setContextClassLoader(ClassLoader.getPlatformClassLoader());
    try {
      assertThat(words(Locale.US).term(Control.CLOCK)).isEqualTo("clock");
    } finally {
      thread.setContextClassLoader(usual);
    }
  }
}

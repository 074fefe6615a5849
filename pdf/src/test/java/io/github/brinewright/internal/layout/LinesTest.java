package io.github.brinewright.internal.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.document.TextStyle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinesTest {
  private static final TextStyle STYLE = TextStyle.BODY;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Soft water for a home with hard water and a long sentence about it",
        "Wasserenthärtungsanlagensalzverbrauchsberechnungsgrundlage",
        "a b c d e f g h i j k l m n o p q r s t u v w x y z",
        "Beauséjour–Thériault-Ålander, 27 Quarry Lane",
        ""
      })
  void noLineIsWiderThanItsColumnAndNoLetterIsLost(String text) {
    for (double width : new double[] {20, 60, 200}) {
      List<String> lines = Lines.of(text, STYLE, width);
      assertThat(lines)
          .isNotEmpty()
          .allSatisfy(
              line -> assertThat(STYLE.width(line.stripTrailing())).isLessThanOrEqualTo(width));
      assertThat(String.join("", lines)).isEqualTo(text);
    }
  }

  @Test
  void aNumberStaysWithItsUnitWhereBothFit() {
    String text = "sized for 22.2 gpg of it";
    double room = STYLE.width("sized for 22.2 ");

    assertThat(Lines.of(text, STYLE, room)).containsExactly("sized for ", "22.2 gpg of it");
    assertThat(Lines.of("22.2 gpg", STYLE, STYLE.width("22.2"))).startsWith("22.2 ");
  }

  @Test
  void aLetterWiderThanTheColumnStandsAlone() {
    assertThat(Lines.of("WW", STYLE, 1)).containsExactly("W", "W");
  }

  @Test
  void everyLetterOfTheLanguagesWeWriteHasAGlyph() {
    String needed =
        "áéíóúüñ¿¡ÁÉÍÓÚÜÑàâæçèêëîïôœùûÿÀÂÇÈÉÊËÎÏÔŒÙÛŸ«»äöüßåÅğışİ₃²³−≥≤×÷±·–—’“”…°µ\u00A0\u202F";
    assertThat(needed.codePoints().filter(c -> !STYLE.weight().typeface().has(c)).toArray())
        .isEmpty();
  }

  @Test
  void anAccentWrittenApartIsComposedAndAnUnknownLetterIsMarked() {
    assertThat(STYLE.weight().typeface().printable("e\u0301\t漢")).isEqualTo("é [U+6F22]");
  }

  @Test
  void aTextThatIsTooLongIsCutWithAnEllipsis() {
    String cut = STYLE.fitting("A very long title of a very long proposal", 80);
    assertThat(cut).endsWith("…").startsWith("A very");
    assertThat(STYLE.width(cut)).isLessThanOrEqualTo(80);
  }

  /** As the dollar of another country is written in French. */
  @Test
  void aSpaceThatHoldsWordsTogetherIsNoPlaceToBreak() {
    String money = "80\u00A0$\u00A0US";
    double width = STYLE.width("environ 80 $ U");

    assertThat(Lines.of("environ " + money, STYLE, width)).containsExactly("environ ", money);
    assertThat(String.join("", Lines.of("environ " + money, STYLE, STYLE.width("80 $"))))
        .isEqualTo("environ " + money);
  }
}

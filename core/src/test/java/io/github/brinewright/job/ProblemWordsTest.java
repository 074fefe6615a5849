package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Problem.Argument;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemWordsTest {
  private static final Argument ONE = new Argument.Number(BigDecimal.ONE);

  private static Problem problem(String value, ProblemCode code, Argument... arguments) {
    Problem.Place place = new Problem.Place("sites.csv", 3, "ph");
    return new Problem(place, value, code, List.of(arguments));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void everyCodeAndEveryNoteHasItsWords(String tag) {
    ProblemWords words = new ProblemWords(Locale.forLanguageTag(tag));
    ProblemWords english = new ProblemWords(Locale.ENGLISH);

    for (ProblemCode code : ProblemCode.values()) {
      Problem problem = problem("x", code, ONE, ONE);
      assertThat(words.say(problem)).contains("sites.csv", "3", "ph", "\"x\"");
      if (!tag.startsWith("en")) {
        assertThat(words.say(problem)).isNotEqualTo(english.say(problem));
      }
    }
    assertThat(Arrays.stream(Note.values()).map(words::say))
        .doesNotHaveDuplicates()
        .hasSize(Note.values().length);
  }

  @Test
  void aProblemReadsAsASentenceInEachLanguage() {
    Problem problem =
        problem("74", ProblemCode.OUT_OF_RANGE, Argument.Number.of(0), Argument.Number.of(14));

    assertThat(new ProblemWords(Locale.US).say(problem))
        .isEqualTo("sites.csv, row 3, column ph: \"74\" must be from 0 to 14");
    assertThat(new ProblemWords(Locale.forLanguageTag("es-US")).say(problem))
        .isEqualTo("sites.csv, fila 3, columna ph: \"74\" debe estar entre 0 y 14");
    assertThat(new ProblemWords(Locale.CANADA_FRENCH).say(problem))
        .isEqualTo("sites.csv, ligne 3, colonne ph : \"74\" doit être de 0 à 14");
    assertThat(new ProblemWords(Locale.GERMANY).say(problem))
        .as("no words of its own")
        .isEqualTo(problem.toString());
  }

  @Test
  void aFormNamesItsFieldsByTheirLabels() {
    Argument.ColumnName other = new Argument.ColumnName("hardness_mg_per_l");
    Problem problem = problem("", ProblemCode.HARDNESS_NEEDED, other);
    Map<String, String> labels = Map.of("ph", "pH", "hardness_mg_per_l", "Hardness, mg/L");

    assertThat(new ProblemWords(Locale.US).sayOfForm(problem, "visit.pdf", labels))
        .startsWith("visit.pdf, field \"pH\": is needed, or \"Hardness, mg/L\" instead");
    assertThat(new ProblemWords(Locale.US).sayOfForm(problem, "visit.pdf", Map.of()))
        .startsWith("visit.pdf, field ph: is needed, or hardness_mg_per_l instead");
  }

  /** Escape sequences, marks that turn the direction of writing, separators, broken pairs. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u001B[31m",
        "\u0007",
        "\u0085",
        "\u202E",
        "\u2067",
        "\u200F",
        "\u2028",
        "\uD800"
      })
  void whatCannotBePrintedBecomesADot(String bad) {
    Problem inValue = problem("a" + bad + "b", ProblemCode.REFUSED, new Argument.Text(bad));
    Problem inNames =
        new Problem(
            new Problem.Place("f" + bad, 1, "c" + bad),
            "",
            ProblemCode.COLUMN_UNKNOWN,
            List.of(new Argument.Meant("zzzzzzzz", List.of("k" + bad))));

    for (Problem problem : List.of(inValue, inNames)) {
      assertThat(problem.toString()).contains("·").doesNotContain(bad.substring(0, 1));
    }
    assertThat(new ProblemWords(Locale.US).sayOfForm(inValue, bad, Map.of("ph", bad)))
        .doesNotContain(bad.substring(0, 1));
  }

  @Test
  void longValuesAreShortenedInEachLanguage() {
    Problem problem = problem("x".repeat(1_000), ProblemCode.NOT_A_NUMBER);

    assertThat(problem.toString()).contains("x… (1000 characters)\"").hasSizeLessThan(200);
    assertThat(new ProblemWords(Locale.forLanguageTag("es")).say(problem))
        .contains("(1000 caracteres)");
    assertThat(problem.value()).as("kept as it stood").hasSize(1_000);
  }

  @Test
  void bracesInAValueAreLeftAlone() {
    assertThat(problem("{0}{9}", ProblemCode.NOT_A_DATE).toString()).contains("\"{0}{9}\"");
    assertThat(problem("", ProblemCode.REFUSED, new Argument.Text("{7}")).toString())
        .endsWith("cannot be used: {7}");
  }
}

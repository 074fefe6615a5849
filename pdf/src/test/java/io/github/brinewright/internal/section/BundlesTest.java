package io.github.brinewright.internal.section;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.document.Typeface;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every language says everything, with the same figures, in letters that the font has. */
class BundlesTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d+}");

  private static Properties load(String name) throws IOException {
    Properties texts = new Properties();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                BundlesTest.class.getResourceAsStream("/io/github/brinewright/" + name)),
            StandardCharsets.UTF_8)) {
      texts.load(in);
    }
    return texts;
  }

  private static TreeSet<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @CsvSource({
    "words/messages,es",
    "words/messages,fr",
    "internal/section/texts,es",
    "internal/section/texts,fr"
  })
  void aLanguageIsComplete(String bundle, String language) throws IOException {
    Properties english = load(bundle + ".properties");
    Properties other = load(bundle + "_" + language + ".properties");

    assertThat(other.stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
    for (String key : english.stringPropertyNames()) {
      assertThat(places(other.getProperty(key)))
          .as(language + " " + key)
          .isEqualTo(places(english.getProperty(key)));
    }
  }

  /** French sets a space before these signs, which must not be left at the start of a line. */
  @ParameterizedTest
  @CsvSource({"words/messages_fr.properties", "internal/section/texts_fr.properties"})
  void frenchSignsStayWithTheirWords(String bundle) throws IOException {
    load(bundle)
        .forEach(
            (key, text) ->
                assertThat(text.toString()).as(key.toString()).doesNotContainPattern(" [:;?!]"));
  }

  @ParameterizedTest
  @CsvSource({
    "words/messages.properties",
    "words/messages_es.properties",
    "words/messages_fr.properties",
    "internal/section/texts.properties",
    "internal/section/texts_es.properties",
    "internal/section/texts_fr.properties"
  })
  void theFontHasEveryLetter(String bundle) throws IOException {
    Typeface face = Typeface.Weight.REGULAR.typeface();
    Typeface bold = Typeface.Weight.BOLD.typeface();
    load(bundle)
        .forEach(
            (key, text) ->
                assertThat(text.toString().codePoints())
                    .as(bundle + " " + key)
                    .allMatch(letter -> face.has(letter) && bold.has(letter)));
  }
}

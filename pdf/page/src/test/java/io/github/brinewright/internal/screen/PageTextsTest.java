package io.github.brinewright.internal.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every language says everything, with the same figures; what is said is used. */
class PageTextsTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d+}");
  private static final Map<String, String> ENGLISH = PageTexts.OWN.in(Locale.US);

  private static TreeSet<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"es", "fr"})
  void aLanguageIsComplete(String language) {
    Map<String, String> other = PageTexts.OWN.in(Locale.forLanguageTag(language));

    assertThat(other.keySet()).isEqualTo(ENGLISH.keySet());
    ENGLISH.forEach(
        (key, text) ->
            assertThat(places(other.get(key))).as(language + " " + key).isEqualTo(places(text)));
  }

  /** French sets a space before these signs, which must not be left at the start of a line. */
  @Test
  void frenchSignsStayWithTheirWords() {
    PageTexts.OWN
        .in(Locale.FRANCE)
        .forEach((key, text) -> assertThat(text).as(key).doesNotContainPattern(" [:;?!»]|« "));
  }

  @Test
  void everyTextIsSaidSomewhere() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      String code =
          files.filter(Files::isRegularFile).map(PageTextsTest::read).collect(Collectors.joining());
      for (String key : ENGLISH.keySet()) {
        boolean made =
            key.startsWith("page.save.")
                || key.startsWith("page.document.")
                || key.matches("page\\.[A-Z]+|page\\.(visit|compare|take)");
        assertThat(made || code.contains("\"" + key + "\"")).as(key).isTrue();
      }
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}

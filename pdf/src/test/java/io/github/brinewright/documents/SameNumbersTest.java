package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.SettingsSheet;
import java.io.IOException;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What English documents say in numbers, which are looked up one by one, other languages say too.
 */
class SameNumbersTest {
  private static final LocalDate DAY = DemoTown.DAY;
  private static final Job JOB = DemoTown.JOB;

  static Stream<Arguments> homesAndLanguages() {
    return JOB.homes().stream()
        .map(home -> home.site().id())
        .flatMap(id -> Stream.of("es-US", "fr-CA").map(tag -> Arguments.of(id, tag)));
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void theNumbersOfADocumentAreTheSameInEveryLanguage(String id, String tag) throws IOException {
    Comparison comparison = DemoTown.compare(id);
    List<byte[]> english = documents(id, comparison, JOB.dealer());
    Locale locale = Locale.forLanguageTag(tag);
    List<byte[]> other = documents(id, comparison, JOB.dealer().writing(locale));

    for (int i = 0; i < english.size(); i++) {
      assertThat(numbers(other.get(i), locale, comparison))
          .containsExactlyInAnyOrderElementsOf(numbers(english.get(i), Locale.US, comparison));
    }
  }

  private static List<byte[]> documents(String id, Comparison comparison, Dealer dealer) {
    return List.of(
        DemoTown.home(JOB, id).proposal(dealer).toPdf(),
        new SettingsSheet(comparison, comparison.closest(), dealer, DAY).toPdf(),
        DemoTown.home(JOB, id).page(dealer).toPdf());
  }

  /**
   * All numbers that are read aloud, but for those in names, of a rule, and in what is quoted in
   * English.
   */
  static List<BigDecimal> numbers(byte[] pdf, Locale locale, Comparison comparison)
      throws IOException {
    String text =
        ReadAloud.of(pdf).said().stream()
            .filter(said -> said.language() == null)
            .map(ReadAloud.Said::text)
            .collect(Collectors.joining("\n"));
    text = text.replace("429.1(a)", "a rule");
    for (Candidate candidate : comparison.candidates()) {
      text = text.replace(candidate.softener().name(), "NAME");
    }
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
    String group = locale.getLanguage().equals("fr") ? "[ \u00A0\u202F]" : ",";
    String point = Pattern.quote(String.valueOf(symbols.getDecimalSeparator()));
    Pattern number = Pattern.compile("\\d+(?:" + group + "\\d{3})*(?:" + point + "\\d+)?");
    return number
        .matcher(text)
        .results()
        .map(found -> found.group().replaceAll(group, "").replaceAll(point, "."))
        .map(BigDecimal::new)
        .sorted()
        .toList();
  }
}

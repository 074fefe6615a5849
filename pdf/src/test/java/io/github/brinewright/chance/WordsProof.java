package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.documents.WholeText;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** No sentence of a document is broken by the figures that happen to stand in it. */
final class WordsProof {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final String NUMBER = "\\d[\\d.,]*";
  private static final String MONEY = "[$¥€]?\\d[\\d.,\\u00a0\\u202f]*+";

  /** What a broken sentence looks like, in any of the languages. */
  private static final Map<String, Pattern> BROKEN =
      Map.of(
          "one of several",
          Pattern.compile(
              "(?<![\\d.,/])(?<!\\d )1 (years|days|bathrooms|months|people|bags|units|payments"
                  + "|regenerations|años|días|baños|meses|personas|sacos|equipos|pagos"
                  + "|regeneraciones|ans|jours|personnes|sacs|appareils|paiements|régénérations"
                  + "|salles)\\b"),
          "nothing more or less",
          Pattern.compile(
              "(?<![\\d.,])([$¥€]0|0 ([$¥€]|[A-Z]{3})( US)?)"
                  + " (more|less|más|menos|de plus|de moins|a year (more|against)|al año frente"
                  + "|par an par)"),
          "from and to the same",
          Pattern.compile(
              "\\b(from|between|de|desde|entre) ("
                  + MONEY
                  + ") (to|and|a|hasta|à|et|y) \\2(?![\\d.,]*\\d)"),
          "a range of nothing",
          Pattern.compile("(?<![\\d.,])(" + MONEY + ")–\\1(?![\\d.,]*\\d)"),
          "about nothing",
          Pattern.compile(
              "\\b(about|cerca de|environ|saves?|ahorra\\w*|[ée]conomise\\w*) "
                  + "([$¥€]0|0\\h([$¥€]|[A-Z]{3}))(?![\\d.,]*\\d)"),
          "about the same against about the same",
          Pattern.compile(
              "(about|cerca de|environ) ("
                  + MONEY
                  + ")[^.;]{0,60}(against|frente a|contre)"
                  + " (about|cerca de|environ) \\2(?![\\d.,\\h]*\\d)"),
          "against the same",
          Pattern.compile(
              "(?<![\\d.,])("
                  + NUMBER
                  + ") (days|días|jours|day|día|jour)[^.]{0,40}"
                  + "(against|frente a|contre) \\1 (days|días|jours|day|día|jour)"),
          "a place left open",
          Pattern.compile("\\{\\d"),
          "signs that stand alone",
          Pattern.compile("[^ ] [,.](\\s|$)|[^.]\\.\\.(\\s|$)|, ?\\."));

  private WordsProof() {}

  static void check(Job job, Comparison comparison, @Nullable HomeStudy study, Locale language) {
    Dealer dealer = job.dealer().writing(language);
    UnitSystem system = dealer.units() == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
    Wording words = DocumentTexts.words(language, system);
    List<String> broken = new ArrayList<>();
    for (Document document : documents(job, comparison, study, dealer)) {
      WholeText.of(document, words)
          .lines()
          .filter(line -> !line.startsWith("["))
          .forEach(line -> look(line, broken));
    }
    assertThat(broken).isEmpty();
  }

  private static void look(String line, List<String> broken) {
    BROKEN.forEach(
        (what, pattern) -> {
          if (pattern.matcher(line).find()) {
            broken.add(what + ": " + line);
          }
        });
  }

  private static List<Document> documents(
      Job job, Comparison comparison, @Nullable HomeStudy study, Dealer dealer) {
    ServiceStudy service = job.service(comparison).orElse(null);
    List<Document> documents = new ArrayList<>();
    documents.add(new Proposal(comparison, study, service, dealer, DAY, null, null).model());
    documents.add(new ComparisonPage(comparison, dealer, DAY, service).model());
    if (service != null) {
      documents.add(new ServiceReport(service, dealer, DAY, null).model());
    }
    return documents;
  }
}

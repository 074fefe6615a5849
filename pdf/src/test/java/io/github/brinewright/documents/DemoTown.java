package io.github.brinewright.documents;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.provider.Arguments;

/** The invented town, whose homes the documents are made for. */
final class DemoTown {
  static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "..", "samples", "job").normalize();
  static final Job JOB = JobFolder.read(FOLDER).job().orElseThrow();
  static final List<String> LANGUAGES = List.of("en-US", "es-US", "fr-CA");

  /** A home, compared and studied once for all tests. */
  record Home(Comparison comparison, @Nullable HomeStudy study, @Nullable ServiceStudy service) {
    Proposal proposal(Dealer dealer) {
      return new Proposal(comparison, study, service, dealer, DAY, null, null);
    }

    ComparisonPage page(Dealer dealer) {
      return new ComparisonPage(comparison, dealer, DAY, service);
    }
  }

  private static final Map<String, Home> HOMES = new ConcurrentHashMap<>();

  private DemoTown() {}

  /** A home of a job; ids are different in all jobs. */
  static Home home(Job job, String id) {
    return HOMES.computeIfAbsent(
        id,
        key -> {
          Comparison comparison = job.compare(job.home(id).orElseThrow());
          return new Home(
              comparison, job.study(comparison).orElse(null), job.service(comparison).orElse(null));
        });
  }

  static JobFiles files() throws IOException {
    return JobFiles.in(FOLDER);
  }

  static Stream<String> homes() {
    return JOB.homes().stream().map(visit -> visit.site().id());
  }

  static Stream<Arguments> homesAndLanguages() {
    return homes().flatMap(id -> LANGUAGES.stream().map(tag -> Arguments.of(id, tag)));
  }

  static Comparison compare(String id) {
    return home(JOB, id).comparison();
  }

  /** The dealer in a language; in French in metric units on A4. */
  static Dealer dealer(String tag) {
    return writing(JOB.dealer(), tag);
  }

  static Dealer writing(Dealer dealer, String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    return tag.equals("fr-CA")
        ? dealer.writing(locale, Dealer.Paper.A4, UnitSystem.METRIC)
        : dealer.writing(locale, Dealer.Paper.LETTER, UnitSystem.US);
  }

  static Wording words(Dealer dealer) {
    return DocumentTexts.words(dealer.locale(), dealer.units());
  }
}

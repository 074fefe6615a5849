package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.HowSure;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * What holds for any home, price list and dealer. A case that fails is printed as the files of its
 * job; {@code -Dcase=17} runs case 17 alone.
 */
class HomesByChanceTest {
  private static final List<Locale> LANGUAGES =
      List.of(Locale.US, Locale.forLanguageTag("es-US"), Locale.CANADA_FRENCH);
  private static final int WRITTEN = 10;
  private static final int YEARS = 20;
  private static final int MOST_PRINTED = Integer.getInteger("printed", 3);

  @Test
  @DisabledIfSystemProperty(named = "long", matches = "true")
  void holdsInTwoHundredHomes() {
    run(200);
  }

  @Test
  @Tag("long")
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void holdsInTenThousandHomes() {
    run(10_000);
  }

  private static void run(int cases) {
    Integer only = Integer.getInteger("case");
    IntStream numbers = only == null ? IntStream.range(0, cases) : IntStream.of(only);
    List<String> failed =
        numbers.parallel().mapToObj(HomesByChanceTest::failure).flatMap(Optional::stream).toList();
    assertThat(failed.stream().limit(MOST_PRINTED))
        .as("%s of %s cases fail", failed.size(), cases)
        .isEmpty();
  }

  private static Optional<String> failure(int number) {
    Case each = Case.of(number);
    try {
      check(each);
      return Optional.empty();
    } catch (RuntimeException | AssertionError failure) {
      StringWriter trace = new StringWriter();
      failure.printStackTrace(new PrintWriter(trace));
      return Optional.of("\n" + each + trace);
    }
  }

  private static void check(Case each) {
    Job job = each.job();
    Comparison comparison = Case.comparison(job);
    boolean written = each.number() % WRITTEN == 0;
    Optional<HomeStudy> study = job.study(comparison);
    assertThat(study.isPresent()).isEqualTo(comparison.recommended().isPresent());
    ChoiceProof.check(comparison);
    study.ifPresent(YearProof::check);
    PresentProof.check(job, comparison);
    PeopleProof.check(job, Case.home(job), comparison);
    FiguresProof.check(
        comparison,
        DocumentTexts.words(job.dealer().locale(), job.dealer().units()),
        written ? YEARS : 0);
    DocumentsProof.models(job, comparison, study.orElse(null));
    Locale language = LANGUAGES.get(each.number() % LANGUAGES.size());
    WordsProof.check(job, comparison, study.orElse(null), language);
    if (written) {
      DocumentsProof.files(job, LANGUAGES.get(each.number() / WRITTEN % LANGUAGES.size()));
      HowSure.of(comparison)
          .ifPresent(
              sure ->
                  comparison.candidates().stream()
                      .flatMapToInt(one -> sure.bestInPercentOfDraws(one).stream())
                      .forEach(percent -> assertThat(percent).isBetween(0, 100)));
    }
  }
}

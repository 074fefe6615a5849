package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.proposal.VisitSheet;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What stands at each label of a document is what the library computes for it, in each language.
 * The expectations share no code with the sections.
 */
class LabelledValuesTest {
  /** Homes of the town, and some that nobody thought of. */
  static Stream<Arguments> homesAndLanguages() {
    Stream<Arguments> random =
        RandomHomes.ids()
            .flatMap(id -> DemoTown.LANGUAGES.stream().map(tag -> Arguments.of(id, tag)));
    return Stream.concat(DemoTown.homesAndLanguages(), random);
  }

  private static Job job(String id) {
    return RandomHomes.ids().anyMatch(id::equals) ? RandomHomes.JOB : DemoTown.JOB;
  }

  private static Comparison compare(String id) {
    return job(id).compare(job(id).visit(id).orElseThrow());
  }

  private static void check(Document model, Wording words, Expected expected) {
    Labelled said = new Labelled(model, words);
    assertThat(said.values()).containsExactlyInAnyOrderEntriesOf(expected.values());
    assertThat(said.labels()).containsAllEntriesOf(expected.labels());
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aProposalSaysWhatIsComputed(String id, String tag) {
    Dealer dealer = DemoTown.writing(job(id).dealer(), tag);
    Wording words = DemoTown.words(dealer);
    Comparison comparison = compare(id);
    Optional<HomeStudy> study = job(id).study(comparison);
    Comparison before =
        job(id)
            .compare(new QuotedHome(comparison.home().site().withPeople(2), comparison.tariff()));
    Revision revision = Revision.between(before, DemoTown.DAY.minusDays(9), comparison);
    Document model =
        new Proposal(
                comparison, study, dealer, DemoTown.DAY, Optional.empty(), Optional.of(revision))
            .model();

    check(
        model,
        words,
        new ExpectedProposal(comparison, study.orElse(null), dealer, words).revised(revision));
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aSettingsSheetSaysWhatIsComputed(String id, String tag) {
    Dealer dealer = DemoTown.writing(job(id).dealer(), tag);
    Wording words = DemoTown.words(dealer);
    Comparison comparison = compare(id);
    for (Candidate candidate : comparison.bestOfEachUnit()) {
      Document model = new SettingsSheet(comparison, candidate, dealer, DemoTown.DAY).model();
      check(model, words, new ExpectedSheet(candidate, words));
    }
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aPageOfThreeSizesSaysWhatIsComputed(String id, String tag) {
    Dealer dealer = DemoTown.writing(job(id).dealer(), tag);
    Wording words = DemoTown.words(dealer);
    Comparison comparison = compare(id);
    Document model = new ComparisonPage(comparison, dealer, DemoTown.DAY).model();

    check(model, words, new ExpectedPage(comparison, words));
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.DemoTown#homesAndLanguages")
  void aFormBeginsWithWhatIsKnown(String id, String tag) throws IOException {
    checkForm(SiteCells.of(DemoTown.files(), id).orElseThrow(), tag);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void aBlankFormAsksForEverything(String tag) {
    checkForm(Map.of(), tag);
  }

  private static void checkForm(Map<String, String> cells, String tag) {
    Dealer dealer = DemoTown.dealer(tag);
    Wording words = DemoTown.words(dealer);
    CarriedJob carried = new CarriedJob(Optional.empty(), DemoTown.DAY, Map.of());
    Document model = new VisitSheet(dealer, DemoTown.JOB.tariffs(), cells, carried).model();

    check(model, words, new ExpectedForm(cells, DemoTown.JOB.tariffs(), words));
  }
}

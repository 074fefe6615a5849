package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.proposal.VisitSheet;
import io.github.brinewright.regeneration.ReserveForm;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What stands at each label of a document is what the library computes for it, in each language.
 * The expectations share no code with the sections.
 */
class LabelledValuesTest {
  /** Set on the day of the sheet, and late on New Year's Eve with the reserve told besides. */
  private static final List<ControlOptions> OPTIONS =
      List.of(
          ControlOptions.on(DemoTown.DAY),
          new ControlOptions(LocalDate.of(2026, 12, 31), 23, ReserveForm.SEPARATE));

  /**
   * Homes of the town, some that nobody thought of, some with clocks on weekdays, and softeners.
   */
  static Stream<Arguments> homesAndLanguages() {
    Stream<Arguments> random =
        Stream.of(RandomHomes.ids(), WeekdayHomes.ids(), FoundHomes.ids())
            .flatMap(Function.identity())
            .flatMap(id -> DemoTown.LANGUAGES.stream().map(tag -> Arguments.of(id, tag)));
    return Stream.concat(DemoTown.homesAndLanguages(), random);
  }

  /** A home, and the dealer writing in a language. */
  private record Given(Job job, DemoTown.Home home, Dealer dealer, Wording words) {
    static Given of(String id, String tag) {
      Job job = jobOf(id);
      Dealer dealer = DemoTown.writing(job.dealer(), tag);
      return new Given(job, DemoTown.home(job, id), dealer, DemoTown.words(dealer));
    }

    Comparison comparison() {
      return home.comparison();
    }

    private static Job jobOf(String id) {
      if (WeekdayHomes.ids().anyMatch(id::equals)) {
        return WeekdayHomes.JOB;
      } else if (FoundHomes.ids().anyMatch(id::equals)) {
        return FoundHomes.JOB;
      }
      return RandomHomes.ids().anyMatch(id::equals) ? RandomHomes.JOB : DemoTown.JOB;
    }

    /** What changed since two people lived there. */
    Revision revision() {
      Comparison comparison = comparison();
      Site before = comparison.home().site().withPeople(2);
      return Revision.between(
          job.compare(new QuotedHome(before, comparison.tariff())),
          DemoTown.DAY.minusDays(9),
          comparison);
    }
  }

  static void check(Document model, Wording words, Expected expected) {
    Labelled said = new Labelled(model, words);
    assertThat(said.values()).containsExactlyInAnyOrderEntriesOf(expected.values());
    assertThat(said.labels()).containsAllEntriesOf(expected.labels());
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aProposalSaysWhatIsComputed(String id, String tag) {
    Given given = Given.of(id, tag);
    Revision revision = given.revision();
    Proposal proposal =
        new Proposal(
            given.comparison(),
            given.home().study(),
            given.home().service(),
            given.dealer(),
            DemoTown.DAY,
            null,
            revision);
    Expected expected =
        new ExpectedProposal(given.home(), given.dealer(), given.words()).revised(revision);

    check(proposal.model(), given.words(), expected);
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aSettingsSheetSaysWhatIsComputed(String id, String tag) {
    Given given = Given.of(id, tag);
    for (Candidate candidate : given.comparison().candidates()) {
      for (ControlOptions options : OPTIONS) {
        SettingsSheet sheet =
            new SettingsSheet(given.comparison(), candidate, given.dealer(), DemoTown.DAY, options);
        Expected expected = new ExpectedSheet(candidate, options, given.words()).fitted();
        check(sheet.model(), given.words(), expected);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void aPageOfThreeSizesSaysWhatIsComputed(String id, String tag) {
    Given given = Given.of(id, tag);
    ComparisonPage page = given.home().page(given.dealer());
    ExpectedPage expected =
        new ExpectedPage(given.comparison(), given.home().service(), given.words());

    check(page.model(), given.words(), expected);
  }

  /** So that what is checked of softeners in the house is checked for each advice. */
  @Test
  void theHomesWithSoftenersGetEveryAdvice() {
    Stream<DemoTown.Home> homes =
        Stream.concat(
            FoundHomes.ids().map(id -> DemoTown.home(FoundHomes.JOB, id)),
            DemoTown.homes().map(id -> DemoTown.home(DemoTown.JOB, id)));

    assertThat(homes.filter(home -> home.comparison().verdict().permitsRecommendation()))
        .extracting(DemoTown.Home::service)
        .filteredOn(Objects::nonNull)
        .extracting(ServiceStudy::advice)
        .contains(Advice.values());
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
    CarriedJob carried = new CarriedJob("", DemoTown.DAY, Map.of());
    Document model = new VisitSheet(dealer, DemoTown.JOB.tariffs(), cells, carried).model();

    check(model, words, new ExpectedForm(cells, DemoTown.JOB.tariffs(), words));
  }
}

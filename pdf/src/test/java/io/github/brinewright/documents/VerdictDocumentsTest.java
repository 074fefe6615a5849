package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a verdict means for the documents of a home. */
class VerdictDocumentsTest {
  private static final String WELL =
      "site_id,customer,hardness_gpg,people,water_source,bacteria,nitrate_mg_per_l,ph,"
          + "iron_mg_per_l,dissolved_iron_mg_per_l,manganese_mg_per_l,"
          + "treated_hardness_gpg,treated_iron_mg_per_l\n"
          + "Ready,Ann,18,3,private_well,none_found,1,7.4,0.1,0.1,0,,\n"
          + "Untested,Ben,18,3,private_well,,1,7.4,0.1,0.1,0,,\n"
          + "Untreated,Cyd,18,3,private_well,none_found,1,7.4,8,8,0.01,,\n"
          + "Treated,Dee,18,3,private_well,none_found,1,7.4,8,8,0.01,17.5,0.1\n"
          + "Soft,Eve,3,3,private_well,none_found,1,7.4,0.1,0.1,0,,\n";
  private static final Job WELLS = job();

  private static Job job() {
    JobReading reading =
        JobFolder.read(
            JobFiles.of(
                Map.of(
                    "sites.csv", WELL, "dealer.properties", "cancellation_forms_attached=yes\n")));
    return reading.job().orElseThrow(() -> new AssertionError(String.valueOf(reading.problems())));
  }

  private static Comparison compare(String id) {
    return WELLS.compare(WELLS.home(id).orElseThrow());
  }

  private static Document proposal(Comparison comparison, Dealer dealer) {
    return new Proposal(comparison, dealer, DemoTown.DAY).model();
  }

  private static Document page(Comparison comparison, Dealer dealer) {
    return new ComparisonPage(comparison, dealer, DemoTown.DAY).model();
  }

  private static Document sheet(Comparison comparison, Dealer dealer) {
    Candidate candidate = comparison.closest();
    return new SettingsSheet(comparison, candidate, dealer, DemoTown.DAY).model();
  }

  private static String text(Document document) {
    return WholeText.of(document, DemoTown.words(WELLS.dealer()));
  }

  private static String proposal(String id) {
    return text(proposal(compare(id), WELLS.dealer()));
  }

  @Test
  void aReadyHomeMaySign() {
    assertThat(compare("Ready").verdict().kind()).isEqualTo(VerdictKind.READY);
    assertThat(proposal("Ready"))
        .contains("Ready for a softener", "We recommend", "SIGNATURE customer_signature");
  }

  @Test
  void aHomeToBeTestedFirstHasNothingToSign() {
    assertThat(compare("Untested").verdict().kind()).isEqualTo(VerdictKind.TEST_FIRST);
    assertThat(proposal("Untested"))
        .contains("Test first", "figures are provisional", "For now we recommend")
        .contains("What would change it: A laboratory test for coliform bacteria")
        .doesNotContain("SIGNATURE", "Acceptance");
  }

  @Test
  void aHomeToBeTreatedFirstHasNoRecommendationUntilTheTreatmentIsStated() {
    assertThat(compare("Untreated").verdict().kind()).isEqualTo(VerdictKind.TREAT_FIRST);
    assertThat(proposal("Untreated"))
        .contains("Treat the water first", "We recommend no softener until")
        .doesNotContain("SIGNATURE", "Options side by side", "the softener is sized for");
    assertThat(text(page(compare("Untreated"), WELLS.dealer())))
        .contains("Treat the water first")
        .doesNotContain("Sizes and salt settings");
  }

  @Test
  void theAcceptanceRestsOnTheTreatmentAsStated() {
    assertThat(compare("Treated").verdict().isConditional()).isTrue();
    assertThat(proposal("Treated"))
        .contains(
            "sized for the water after treatment as stated: 17.5 gpg of hardness and 0.10 mg/L of iron")
        .contains("on the condition that the water after treatment is as stated: 17.5 gpg")
        .contains("SIGNATURE customer_signature");
  }

  @Test
  void softWaterIsSaidToBeSoftEnough() {
    assertThat(compare("Soft").verdict().kind()).isEqualTo(VerdictKind.SOFT_ENOUGH);
    assertThat(proposal("Soft"))
        .contains("The water is soft enough", "We recommend no softener.")
        .doesNotContain("SIGNATURE", "Options side by side", "the softener is sized for");
  }

  static Stream<Arguments> homes() {
    return Stream.concat(
        DemoTown.homesAndLanguages(),
        RandomHomes.ids()
            .flatMap(id -> DemoTown.LANGUAGES.stream().map(tag -> Arguments.of(id, tag))));
  }

  private static Job jobOf(String id) {
    return RandomHomes.ids().anyMatch(id::equals) ? RandomHomes.JOB : DemoTown.JOB;
  }

  @ParameterizedTest
  @MethodSource("homes")
  void everyDocumentBeginsWithTheVerdictAndItsReasons(String id, String tag) {
    Comparison comparison = DemoTown.home(jobOf(id), id).comparison();
    Dealer dealer = DemoTown.writing(jobOf(id).dealer(), tag);
    Wording words = DemoTown.words(dealer);
    for (Document document : documents(comparison, dealer)) {
      Section first = document.sections().get(0);
      assertThat(first.key()).isEqualTo("verdict");
      String text = WholeText.of(document, words);
      assertThat(text).contains(words.text("verdict." + comparison.verdict().kind()));
      for (Finding reason : comparison.verdict().reasons()) {
        boolean answered =
            comparison.treatment().isPresent() && comparison.verdict().isAnswered(reason);
        if (!answered || document.kind() == Document.Kind.PROPOSAL) {
          assertThat(text).contains(plain(words.finding(reason)));
        }
        assertThat(text.contains(plain(words.change(reason)))).isEqualTo(!answered);
      }
    }
  }

  /** Page one is the opening of the proposal; what it warns of, the other two documents do. */
  @ParameterizedTest
  @MethodSource("homes")
  void everyCautionOfPageOneStandsOnTheOtherDocuments(String id, String tag) {
    Comparison comparison = DemoTown.home(jobOf(id), id).comparison();
    Dealer dealer = DemoTown.writing(jobOf(id).dealer(), tag);
    Wording words = DemoTown.words(dealer);
    for (Document document : documents(comparison, dealer)) {
      String text = WholeText.of(document, words);
      for (Finding caution : comparison.cautions()) {
        assertThat(text).as(document.kind().name()).contains(plain(words.finding(caution)));
      }
    }
  }

  private static List<Document> documents(Comparison comparison, Dealer dealer) {
    return List.of(
        proposal(comparison, dealer), page(comparison, dealer), sheet(comparison, dealer));
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }
}

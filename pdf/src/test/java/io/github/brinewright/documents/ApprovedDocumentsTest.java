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
import io.github.brinewright.softener.Control;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole documents as text that somebody has read. Renewed with -Dbrinewright.pages=write. */
class ApprovedDocumentsTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "src/test/resources/approved");
  private static final Job JOB = DemoTown.JOB;

  private static void approve(String name, Document model, Dealer dealer) throws IOException {
    String text = WholeText.of(model, DemoTown.words(dealer));
    Path file = FOLDER.resolve(name + ".txt");
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, text);
    }
    assertThat(file).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(text);
  }

  /** One that recommends, in each language; and one home that nothing suits. */
  @ParameterizedTest
  @CsvSource({"H01, en-US", "H06, es-US", "H11, fr-CA", "H10, en-US", "R3, en-US"})
  void aProposalIsAsApproved(String id, String tag) throws IOException {
    Job job = id.startsWith("R") ? RandomHomes.JOB : JOB;
    Dealer dealer = DemoTown.writing(job.dealer(), tag);
    DemoTown.Home home = DemoTown.home(job, id);
    Document model = new Proposal(home.comparison(), home.study(), dealer, DemoTown.DAY).model();

    approve("proposal-" + id, model, dealer);
  }

  @Test
  void aRevisedProposalIsAsApproved() throws IOException {
    Comparison now = DemoTown.compare("H05");
    Site site = now.home().site();
    Comparison before = JOB.compare(new QuotedHome(site.withPeople(1), now.tariff()));
    Revision revision = Revision.between(before, DemoTown.DAY.minusDays(30), now);
    Dealer dealer = JOB.dealer();
    Document model = new Proposal(now, null, dealer, DemoTown.DAY, null, revision).model();

    approve("proposal-H05-revised", model, dealer);
  }

  @ParameterizedTest
  @CsvSource({"H01, CLOCK, en-US", "H03, METERED_AT_NIGHT, es-US", "H11, METERED_AT_ONCE, fr-CA"})
  void aSettingsSheetIsAsApproved(String id, Control control, String tag) throws IOException {
    Dealer dealer = DemoTown.dealer(tag);
    Comparison comparison = DemoTown.compare(id);
    Candidate candidate =
        comparison.candidates().stream()
            .filter(each -> each.setup().control() == control)
            .findFirst()
            .orElseThrow();
    Document model = new SettingsSheet(comparison, candidate, dealer, DemoTown.DAY).model();

    approve("settings-" + id, model, dealer);
  }

  @Test
  void aSettingsSheetThatBreaksLimitsSaysSoAsApproved() throws IOException {
    Comparison comparison = DemoTown.compare("H10");
    SettingsSheet sheet =
        new SettingsSheet(comparison, comparison.closest(), JOB.dealer(), DemoTown.DAY);

    approve("settings-H10-broken", sheet.model(), JOB.dealer());
  }

  @ParameterizedTest
  @CsvSource({"H01, en-US", "H10, fr-CA"})
  void aPageOfThreeSizesIsAsApproved(String id, String tag) throws IOException {
    Dealer dealer = DemoTown.dealer(tag);
    Document model = new ComparisonPage(DemoTown.compare(id), dealer, DemoTown.DAY).model();

    approve("three-" + id, model, dealer);
  }

  @ParameterizedTest
  @CsvSource({"H07, en-US", "H11, es-US"})
  void aFormIsAsApproved(String id, String tag) throws IOException {
    Dealer dealer = DemoTown.dealer(tag);
    CarriedJob carried = new CarriedJob("", DemoTown.DAY, Map.of());
    Document model =
        new VisitSheet(
                dealer, JOB.tariffs(), SiteCells.of(DemoTown.files(), id).orElseThrow(), carried)
            .model();

    approve("form-" + id, model, dealer);
  }
}

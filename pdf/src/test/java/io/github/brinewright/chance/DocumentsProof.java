package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HomeStudy;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Every document of a home can be made. */
final class DocumentsProof {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final byte[] PDF = {'%', 'P', 'D', 'F'};

  private DocumentsProof() {}

  static void models(Job job, Comparison comparison, @Nullable HomeStudy study) {
    Dealer dealer = job.dealer();
    ServiceStudy service = job.service(comparison).orElse(null);
    Proposal proposal = new Proposal(comparison, study, service, dealer, DAY, null, null);
    assertThat(proposal.model().sections()).isNotEmpty();
    ComparisonPage page = new ComparisonPage(comparison, dealer, DAY, service);
    assertThat(page.model().sections()).isNotEmpty();
    for (Candidate candidate : comparison.candidates()) {
      SettingsSheet sheet = new SettingsSheet(comparison, candidate, dealer, DAY);
      assertThat(sheet.model().sections()).isNotEmpty();
    }
  }

  /** In one of the languages. */
  static void files(Job job, Locale language) {
    QuotedHome home = Case.home(job).reading(language);
    Job writing =
        Job.of(job.prices())
            .dealer(job.dealer().writing(language))
            .tariffs(job.tariffs())
            .home(home)
            .build();
    Proposals all = Proposals.of(writing).withoutData();
    assertThat(all.write(home, DAY)).startsWith(PDF);
    assertThat(all.onePage().write(home, DAY)).startsWith(PDF);
    String unit = job.prices().offers().get(0).softener().id();
    assertThat(all.settings(home, CandidateChoice.ofSoftener(unit), DAY).orElseThrow())
        .startsWith(PDF);
    assertThat(Proposals.of(writing).form(home, DAY)).startsWith(PDF);
  }
}

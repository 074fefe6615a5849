package io.github.brinewright.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.DemoTown;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Control;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The documents of a job by one facade. */
class ProposalsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final Job TOWN = DemoTown.job();
  private static final Proposals PROPOSALS = Proposals.of(TOWN);

  private static QuotedHome home(String id) {
    return TOWN.home(id).orElseThrow();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private static String language(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getDocumentCatalog().getLanguage();
    }
  }

  private static Job twoHomes(String dealer) {
    return JobFolder.read(
            JobFiles.of(
                Map.of(
                    "dealer.properties",
                    dealer,
                    "sites.csv",
                    "site_id,customer,language,hardness_gpg,people\n"
                        + "A1,Ann,fr-CA,18,3\nB2,Ben,,27,5\n")))
        .job()
        .orElseThrow();
  }

  @Test
  void allHomesComeAsAStreamInTheirOrder() {
    List<HomeDocument> all = PROPOSALS.all(DAY).toList();

    assertThat(all).extracting(HomeDocument::home).isEqualTo(TOWN.homes());
    assertThat(all)
        .allSatisfy(one -> assertThat(one.pdf()).isEqualTo(PROPOSALS.write(one.home(), DAY)))
        .allSatisfy(
            one ->
                assertThat(one.fileName())
                    .isEqualTo("proposal-" + one.home().site().id() + ".pdf"));
    assertThat(PROPOSALS.onePage().all(DAY).findFirst().orElseThrow().fileName())
        .isEqualTo("comparison-H01.pdf");
  }

  @Test
  void whatTheHomeReadsIsInItsLanguageAndWhatTheDealerReadsInTheDealers() throws IOException {
    Job job = twoHomes("locale=es-US\n");
    Proposals proposals = Proposals.of(job);
    QuotedHome french = job.home("A1").orElseThrow();

    assertThat(language(proposals.write(french, DAY))).isEqualTo("fr-CA");
    assertThat(language(proposals.onePage().write(french, DAY))).isEqualTo("fr-CA");
    assertThat(language(proposals.write(job.home("B2").orElseThrow(), DAY))).isEqualTo("es-US");
    CandidateChoice best =
        CandidateChoice.ofSoftener(job.compare(french).closest().softener().id());
    assertThat(language(proposals.settings(french, best, DAY).orElseThrow())).isEqualTo("es-US");
    assertThat(language(proposals.form(DAY))).isEqualTo("es-US");
  }

  @Test
  void aProposalHoldsTheStudyOfTheYear() throws IOException {
    String proposal = text(PROPOSALS.write(home("H01"), DAY));
    String without = text(new Proposal(TOWN.compare(home("H01")), TOWN.dealer(), DAY).toPdf());
    assertThat(proposal.contains("A year in your home")).isTrue();
    assertThat(without.contains("A year in your home")).isFalse();
  }

  @Test
  void variantsAreCopiesAndGoTogether() throws Exception {
    Proposals bare = PROPOSALS.withoutData().since(TOWN.compare(home("H02")), DAY);
    byte[] revised = bare.write(home("H02"), DAY.plusDays(9));

    assertThat(text(revised)).contains("since May 2, 2026");
    try (PDDocument document = Loader.loadPDF(revised)) {
      assertThat(document.getDocumentCatalog().getNames()).isNull();
    }
    assertThat(text(PROPOSALS.write(home("H02"), DAY))).doesNotContain("since May 2, 2026");
  }

  @Test
  void aChoiceTakesTheBestThatFits() {
    Comparison comparison = TOWN.compare(home("H01"));
    for (Candidate candidate : comparison.candidates()) {
      CandidateChoice exact =
          CandidateChoice.ofSoftener(candidate.softener().id())
              .control(candidate.setup().control());
      exact = candidate.setup().dosage().map(exact::dosage).orElse(exact);
      assertThat(exact.in(comparison)).containsSame(candidate);
    }
    assertThat(CandidateChoice.ofSoftener("SORREL-1").in(comparison))
        .isEqualTo(
            comparison.bestOfEachUnit().stream()
                .filter(candidate -> candidate.softener().id().equals("SORREL-1"))
                .findFirst());
    assertThat(CandidateChoice.ofSoftener("none").in(comparison)).isEmpty();
    assertThat(
            CandidateChoice.ofSoftener("SORREL-1")
                .dosage(SaltDosage.ofPoundsPerCubicFoot(7))
                .in(comparison))
        .isEmpty();
    assertThat(
            CandidateChoice.ofSoftener("SORREL-1").control(Control.METERED_AT_ONCE).in(comparison))
        .isEmpty();
    assertThat(PROPOSALS.settings(home("H01"), CandidateChoice.ofSoftener("none"), DAY)).isEmpty();
  }

  @Test
  void anAccentTooLightToReadIsKnown() {
    assertThat(Proposals.of(twoHomes("accent=#FFE000\n")).darkensAccent()).isTrue();
    assertThat(Proposals.of(twoHomes("accent=#1F5C66\n")).darkensAccent()).isFalse();
  }

  @Test
  void aReportOnTheSoftenerOfAHomeIsWrittenInItsLanguageAndCarriesItsData() throws Exception {
    Job job = withSoftener("clock");
    HomeDocument report = Proposals.of(job).serviceReport(job.homes().get(0), DAY);

    assertThat(report.fileName()).isEqualTo("service-A1.pdf");
    assertThat(language(report.pdf())).isEqualTo("fr-CA");
    assertThat(text(report.pdf()))
        .contains("Que fait votre adoucisseur aujourd'hui", "Page 2 de 2");
    Reopened reopened = Reopened.read(report.pdf());
    assertThat(reopened.job().orElseThrow().homes().get(0).site().present())
        .isEqualTo(job.homes().get(0).site().present());
    assertThat(Proposals.of(job).withoutData().serviceReport(job.homes().get(0), DAY).pdf())
        .hasSizeLessThan(report.pdf().length);
  }

  @Test
  void aReportSaysTheSameEachTime() {
    Job job = withSoftener("clock");
    QuotedHome home = job.homes().get(0);

    assertThat(Proposals.of(job).serviceReport(home, DAY).pdf())
        .isEqualTo(Proposals.of(withSoftener("clock")).serviceReport(home, DAY).pdf());
  }

  @Test
  void aHomeWithoutASoftenerHasNoReport() {
    Job job = twoHomes("name=Dealer\n");

    assertThatThrownBy(() -> Proposals.of(job).serviceReport(job.homes().get(1), DAY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("B2 has no present softener");
  }

  private static Job withSoftener(String control) {
    return JobFolder.read(
            JobFiles.of(
                Map.of(
                    "sites.csv",
                    "site_id,customer,language,hardness_gpg,people,present_control,present_days,"
                        + "present_rated_grains\nA1,Ann,fr-CA,18,3,"
                        + control
                        + ",6,32000\n")))
        .job()
        .orElseThrow();
  }
}

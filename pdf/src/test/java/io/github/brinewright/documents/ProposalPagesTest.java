package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The proposals of the invented town, read back from their pages. */
class ProposalPagesTest {
  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  private static DemoTown.Home home(Comparison comparison) {
    return DemoTown.home(DemoTown.JOB, comparison.home().site().id());
  }

  private static byte[] pdf(Comparison comparison) {
    return home(comparison).proposal(DemoTown.JOB.dealer()).toPdf();
  }

  /** Whether a softener is in the house that should be kept. */
  private static boolean keeps(Comparison comparison) {
    ServiceStudy service = home(comparison).service();
    return service != null && service.advice() != Advice.REPLACE;
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.DemoTown#homes")
  void whatMustBeSaidIsSaid(String id) throws IOException {
    Comparison comparison = DemoTown.compare(id);
    String text = text(pdf(comparison));

    assertThat(text).contains(comparison.home().site().contact().name());
    for (Caution caution : Caution.applying(comparison.home(), comparison.verdict(), Set.of())) {
      assertThat(joined(text)).contains(joined(words.caution(caution)));
    }
    comparison.homeFindings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .forEach(finding -> assertThat(joined(text)).contains(joined(words.finding(finding))));
    if (comparison.verdict().permitsRecommendation()) {
      assertOptions(comparison, text);
    } else {
      assertThat(text).doesNotContain("Options side by side", "Acceptance");
    }
  }

  private void assertOptions(Comparison comparison, String text) {
    for (Candidate candidate : comparison.columns(home(comparison).service() == null ? 5 : 4)) {
      assertThat(joined(text)).contains(joined(candidate.softener().name()));
      assertThat(text)
          .contains(
              candidate.design().feasible()
                  ? words.about(candidate.life().total()).replace("$", "")
                  : "–");
    }
    comparison
        .recommended()
        .ifPresentOrElse(
            candidate -> assertRecommended(candidate, comparison, text),
            () -> assertNothingSold(comparison, text));
  }

  private void assertRecommended(Candidate candidate, Comparison comparison, String text) {
    boolean provisional = comparison.verdict().isProvisional();
    assertThat(text)
        .contains(
            keeps(comparison)
                ? List.of("The softener you have", "Best new one:")
                : List.of(provisional ? "For now we" : "We recommend", "Recommended:"))
        .contains(provisional ? List.of("nothing to sign yet") : List.of("Acceptance", "Signature"))
        .contains(words.figure(Figure.of(candidate.quote().total())));
    for (CostKind kind : CostKind.values()) {
      assertThat(text).contains(words.term(kind) + " ");
    }
  }

  private void assertNothingSold(Comparison comparison, String text) {
    assertThat(text).contains("None of our units suits this home").doesNotContain("Acceptance");
    Finding first =
        comparison.closest().findings().stream().filter(Finding::stops).findFirst().orElseThrow();
    assertThat(joined(text)).contains(joined(words.finding(first)));
  }

  /** Without spaces, so that line breaks do not matter. */
  private static String joined(String text) {
    return text.replaceAll("\\s+", "");
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.DemoTown#homes")
  void everyPageIsNumberedAndTheAppendixIsShort(String id) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(DemoTown.compare(id)))) {
      int pages = document.getNumberOfPages();
      boolean options = DemoTown.compare(id).verdict().permitsRecommendation();
      boolean chosen = options && DemoTown.compare(id).recommended().isPresent();
      int body = chosen ? pageOf("Appendix: Your water", document) - 1 : pages;
      assertThat(body).as("pages before the appendix").isBetween(2, chosen ? 4 : 5);
      assertThat(pages - body).as("pages of the appendix").isBetween(chosen ? 5 : 0, 9);
      assertThat(document.getDocumentInformation().getTitle())
          .startsWith("Water softening proposal");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
      String text = new PDFTextStripper().getText(document);
      for (int page = 1; page <= pages; page++) {
        assertThat(text).contains("Page " + page + " of " + pages);
      }
    }
  }

  /** In every language, and in both systems of units: French is written in metric ones. */
  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.DemoTown#homesAndLanguages")
  void theSignatureIsOnTheFourthPageAtTheLatest(String id, String tag) throws IOException {
    DemoTown.Home home = DemoTown.home(DemoTown.JOB, id);
    try (PDDocument document = Loader.loadPDF(home.proposal(DemoTown.dealer(tag)).toPdf())) {
      PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
      boolean signs =
          home.comparison().verdict().permitsSignature()
              && home.comparison().recommended().isPresent();
      assertThat(form != null && form.getField("customer_signature") != null).isEqualTo(signs);
      if (signs) {
        PDPage page = form.getField("customer_signature").getWidgets().get(0).getPage();
        assertThat(document.getPages().indexOf(page) + 1).isLessThanOrEqualTo(4);
      }
    }
  }

  @Test
  void aDealerMayLeaveTheAppendixOut() throws IOException {
    DemoTown.Home home = DemoTown.home(DemoTown.JOB, "H01");
    Dealer brief =
        Dealer.named("Brief")
            .servicePrices(DemoTown.JOB.dealer().servicePrices())
            .appendix(false)
            .build();
    Proposal proposal = home.proposal(brief);

    assertThat(proposal.sections())
        .extracting(Section::key)
        .containsExactly("verdict", "opening", "choices", "year", "price", "signing");
    try (PDDocument document = Loader.loadPDF(proposal.toPdf())) {
      assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(4);
    }
  }

  private static int pageOf(String heading, PDDocument document) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      if (stripper.getText(document).contains(heading)) {
        return page;
      }
    }
    throw new AssertionError("no page is headed " + heading);
  }

  @Test
  void theSameInputGivesTheSameBytesOnAnyThread() {
    byte[] alone = pdf(DemoTown.compare("H01"));

    assertThat(IntStream.range(0, 16).parallel().mapToObj(i -> pdf(DemoTown.compare("H01"))))
        .allSatisfy(pdf -> assertThat(pdf).isEqualTo(alone));
  }
}

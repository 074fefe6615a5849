package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The proposals against PDF/UA-1 (ISO 14289-1) and PDF/A-3a (ISO 19005-3), by veraPDF. */
class StandardsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final Job JOB = JobFolder.read(Path.of("job")).job().orElseThrow();

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static Stream<Arguments> homesAndLanguages() {
    return JOB.visits().stream()
        .map(visit -> visit.site().id())
        .flatMap(id -> Stream.of("en-US", "es-US", "fr-CA").map(tag -> Arguments.of(id, tag)));
  }

  private static Dealer dealer(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    return tag.equals("fr-CA")
        ? JOB.dealer().writing(locale, Dealer.Paper.A4, Dealer.Units.METRIC)
        : JOB.dealer().writing(locale, Dealer.Paper.LETTER, Dealer.Units.US);
  }

  /** Each kind of document for a home, in a language. */
  static List<byte[]> documents(String id, String tag) {
    Comparison comparison = JOB.compare(JOB.visit(id).orElseThrow());
    Dealer dealer = dealer(tag);
    return List.of(
        new Proposal(comparison, JOB.study(comparison), dealer, DAY, Optional.of(carried(id)))
            .toPdf(),
        new SettingsSheet(comparison, comparison.closest(), dealer, DAY).toPdf(),
        new ComparisonPage(comparison, dealer, DAY).toPdf());
  }

  private static CarriedJob carried(String id) {
    try {
      return new CarriedJob(id, DAY, JobExcerpt.of(JobFiles.in(Path.of("job")), id));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void documentsAreAccessibleAndFitForAnArchive(String id, String tag) throws Exception {
    for (byte[] document : documents(id, tag)) {
      assertThat(failures(document, PDFAFlavour.PDFUA_1)).isEmpty();
      assertThat(failures(document, PDFAFlavour.PDFA_3_A)).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void nothingOverlapsAndNothingLeavesThePage(String id, String tag) throws Exception {
    for (byte[] document : documents(id, tag)) {
      TextBoxes boxes = TextBoxes.of(document);
      assertThat(boxes.count()).isGreaterThan(30);
      assertThat(boxes.outsideTheMargins()).isEmpty();
      assertThat(boxes.overlaps()).isEmpty();
    }
  }

  /** The validator itself can fail: an empty page without tags or metadata is refused. */
  @Test
  void aPlainPageIsRefused() throws Exception {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(plain);
    }
    assertThat(failures(plain.toByteArray(), PDFAFlavour.PDFUA_1)).isNotEmpty();
    assertThat(failures(plain.toByteArray(), PDFAFlavour.PDFA_3_A)).isNotEmpty();
  }

  static List<String> failures(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      assertThat(result.getTotalAssertions()).as("checks made").isPositive();
      return result.getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
          .map(assertion -> assertion.getRuleId().getClause() + ": " + assertion.getMessage())
          .distinct()
          .toList();
    }
  }
}

package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
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
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

  static Stream<String> homes() {
    return JOB.visits().stream().map(visit -> visit.site().id());
  }

  private static byte[] proposal(String id) {
    Comparison comparison = JOB.compare(JOB.visit(id).orElseThrow());
    return new Proposal(
            comparison, JOB.study(comparison), JOB.dealer(), DAY, Optional.of(carried(id)))
        .toPdf();
  }

  private static byte[] sheet(String id) {
    Comparison comparison = JOB.compare(JOB.visit(id).orElseThrow());
    return new SettingsSheet(comparison, comparison.closest(), JOB.dealer(), DAY).toPdf();
  }

  private static byte[] onePage(String id) {
    return new ComparisonPage(JOB.compare(JOB.visit(id).orElseThrow()), JOB.dealer(), DAY).toPdf();
  }

  private static CarriedJob carried(String id) {
    try {
      return new CarriedJob(id, DAY, JobExcerpt.of(JobFiles.in(Path.of("job")), id));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void documentsAreAccessible(String id) throws Exception {
    assertThat(failures(proposal(id), PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(sheet(id), PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(onePage(id), PDFAFlavour.PDFUA_1)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void documentsAreFitForAnArchive(String id) throws Exception {
    assertThat(failures(proposal(id), PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(failures(sheet(id), PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(failures(onePage(id), PDFAFlavour.PDFA_3_A)).isEmpty();
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

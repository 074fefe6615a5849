package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.PdfDocument;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.job.Logo;
import io.github.brinewright.job.OwnPage;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.BatchSummary;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.proposal.VisitSheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The proposals against PDF/UA-1 (ISO 14289-1) and PDF/A-3a (ISO 19005-3), by veraPDF. */
class StandardsTest {
  private static final LocalDate DAY = DemoTown.DAY;
  private static final Job JOB = DemoTown.JOB;

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static Stream<Arguments> homesAndLanguages() {
    return DemoTown.homesAndLanguages();
  }

  /** The same home before a person moved in. */
  private static Comparison other(String id) {
    QuotedHome visit = JOB.home(id).orElseThrow();
    int people = Math.max(1, visit.site().household().people() - 1);
    return JOB.compare(new QuotedHome(visit.site().withPeople(people), visit.tariff()));
  }

  /** Each kind of document for a home, in a language. */
  static List<byte[]> documents(String id, String tag) {
    Comparison comparison = DemoTown.compare(id);
    Dealer dealer = DemoTown.dealer(tag);
    List<byte[]> documents = new ArrayList<>();
    JOB.service(comparison)
        .map(study -> new ServiceReport(study, dealer, DAY, carried(id)).toPdf())
        .ifPresent(documents::add);
    documents.addAll(ofEveryHome(id, tag));
    return documents;
  }

  private static List<byte[]> ofEveryHome(String id, String tag) {
    Comparison comparison = DemoTown.compare(id);
    Dealer dealer = DemoTown.dealer(tag);
    return List.of(
        new Proposal(
                comparison,
                DemoTown.home(JOB, id).study(),
                DemoTown.home(JOB, id).service(),
                dealer,
                DAY,
                carried(id),
                Revision.between(other(id), DAY.minusDays(30), comparison))
            .toPdf(),
        new SettingsSheet(comparison, comparison.closest(), dealer, DAY).toPdf(),
        DemoTown.home(JOB, id).page(dealer).toPdf(),
        form(dealer, cells(id)));
  }

  private static byte[] form(Dealer dealer, Map<String, String> cells) {
    CarriedJob job = new CarriedJob("", DAY, Map.of());
    return new VisitSheet(dealer, JOB.tariffs(), cells, job).toPdf();
  }

  private static Map<String, String> cells(String id) {
    try {
      return SiteCells.of(DemoTown.files(), id).orElseThrow();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void aBlankFormIsAccessibleFitForAnArchiveAndOfTwoPages(String tag) throws Exception {
    byte[] blank = form(DemoTown.dealer(tag), Map.of());

    assertThat(failures(blank, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(blank, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(TextBoxes.of(blank).overlaps()).isEmpty();
    assertThat(TextBoxes.of(blank).pages()).isEqualTo(2);
  }

  @Test
  void aPageOfTheDealersOwnIsAccessibleAndFitForAnArchive() throws Exception {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB), "png", png);
    OwnPage page =
        new OwnPage(
            LocalText.of("About us"),
            LocalText.of("We are invented."),
            Logo.of("van.png", png.toByteArray()),
            LocalText.of("A van beside a door"));
    Dealer dealer = JOB.dealer().change().pages(List.of(page)).build();
    byte[] pdf = DemoTown.home(JOB, "H01").proposal(dealer).toPdf();

    assertThat(failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(TextBoxes.of(pdf).overlaps()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void theComparisonOfThreeSizesIsOnOnePage(String id, String tag) throws Exception {
    byte[] page = DemoTown.home(JOB, id).page(DemoTown.dealer(tag)).toPdf();

    assertThat(TextBoxes.of(page).pages()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void allHomesAtAGlanceAreOnOnePage(String tag) throws Exception {
    List<HomeOutcome> outcomes =
        new ArrayList<>(
            DemoTown.homes()
                .map(id -> HomeOutcome.of(DemoTown.compare(id), "proposal-" + id + ".pdf"))
                .toList());
    outcomes.add(HomeOutcome.failed("X1", "the disk is full"));
    byte[] page = new BatchSummary(outcomes, DemoTown.dealer(tag), DAY).toPdf();

    assertThat(failures(page, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(page, PDFAFlavour.PDFA_3_A)).isEmpty();
    TextBoxes boxes = TextBoxes.of(page);
    assertThat(boxes.pages()).isEqualTo(1);
    assertThat(boxes.outsideTheMargins()).isEmpty();
    assertThat(boxes.overlaps()).isEmpty();
    assertThat(ReadAloud.of(page).outOfOrder()).isEmpty();
  }

  /** The geometry check itself can fail. */
  @Test
  void overlappingTextIsFound() throws Exception {
    var description = new PdfDocument.Description("t", "a", Locale.US, DAY);
    try (PdfDocument document = new PdfDocument(description)) {
      Canvas canvas = document.addPage(300, 300);
      canvas.ornament(
          () -> {
            canvas.text(50, 100, "one text", TextStyle.BODY);
            canvas.text(60, 103, "another", TextStyle.BODY);
            canvas.text(280, 150, "too far right", TextStyle.BODY);
          });
      TextBoxes boxes = TextBoxes.of(document.finish(new Tag(Tag.Role.DOCUMENT)));

      assertThat(boxes.overlaps()).isNotEmpty();
      assertThat(boxes.outsideTheMargins()).isNotEmpty();
    }
  }

  private static CarriedJob carried(String id) {
    try {
      return new CarriedJob(
          id, DAY, JobExcerpt.of(DemoTown.files(), JOB.dealer(), JOB.home(id).orElseThrow()));
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

  /** One that has a softener to be replaced, and one that nothing suits. */
  @ParameterizedTest
  @CsvSource({"P0, en-US", "P0, es-US", "P0, fr-CA", "P11, es-US"})
  void aProposalBesideTheSoftenerOfTheHouseKeepsTheStandardsToo(String id, String tag)
      throws Exception {
    byte[] proposal = DemoTown.home(FoundHomes.JOB, id).proposal(DemoTown.dealer(tag)).toPdf();

    assertThat(failures(proposal, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(failures(proposal, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(TextBoxes.of(proposal).outsideTheMargins()).isEmpty();
    assertThat(TextBoxes.of(proposal).overlaps()).isEmpty();
    assertThat(ReadAloud.of(proposal).outOfOrder()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void nothingOverlapsAndNothingLeavesThePage(String id, String tag) throws Exception {
    for (byte[] document : documents(id, tag)) {
      TextBoxes boxes = TextBoxes.of(document);
      assertThat(boxes.count()).isGreaterThan(12);
      assertThat(boxes.outsideTheMargins()).isEmpty();
      assertThat(boxes.overlaps()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void documentsReadAloudInTheOrderInWhichTheyAreSeen(String id, String tag) throws Exception {
    for (byte[] document : documents(id, tag)) {
      ReadAloud aloud = ReadAloud.of(document);
      assertThat(aloud.outOfOrder()).isEmpty();
      assertThat(aloud.headingsLeftAlone()).isEmpty();
      assertThat(aloud.said())
          .hasSizeGreaterThan(8)
          .noneMatch(part -> part.text().contains("  ·  ·") || part.text().contains("- "));
      assertThat(aloud.said())
          .filteredOn(part -> part.role().equals("Figure"))
          .allSatisfy(figure -> assertThat(figure.text()).hasSizeGreaterThan(40).endsWith("."));
    }
  }

  /**
   * WCAG 2.1, success criteria 1.4.3 and 1.4.11, level AA: text 4.5 to 1, parts of figures 3 to 1
   * against the white page. Grid lines, which only guide the eye, and white itself are left out.
   */
  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void textAndFiguresStandOutFromThePage(String id, String tag) throws Exception {
    for (byte[] document : documents(id, tag)) {
      PaintedColours colours = PaintedColours.of(document);
      assertThat(colours.text())
          .isNotEmpty()
          .allSatisfy(ink -> assertThat(ink.contrastWith(Ink.PAPER)).isGreaterThanOrEqualTo(4.5));
      assertThat(colours.figures())
          .filteredOn(ink -> !near(ink, Ink.HAIRLINE) && !near(ink, Ink.PAPER))
          .allSatisfy(ink -> assertThat(ink.contrastWith(Ink.PAPER)).isGreaterThanOrEqualTo(3));
    }
  }

  /** Colours are written with four digits or so. */
  private static boolean near(Ink one, Ink other) {
    return Math.abs(one.red() - other.red()) < 0.001
        && Math.abs(one.green() - other.green()) < 0.001
        && Math.abs(one.blue() - other.blue()) < 0.001;
  }

  /** The colours are found, and a pale one is seen to be pale. */
  @Test
  void paleTextIsFound() throws Exception {
    var description = new PdfDocument.Description("t", "a", Locale.US, DAY);
    try (PdfDocument document = new PdfDocument(description)) {
      Ink pale = Ink.of("#BBBBBB");
      Tag root = new Tag(Tag.Role.DOCUMENT);
      Canvas canvas = document.addPage(300, 300);
      canvas.ornament(() -> canvas.text(50, 100, "pale", TextStyle.BODY.in(pale)));
      canvas.tagged(
          root.child(Tag.Role.FIGURE), () -> canvas.fill(50, 120, 10, 10, Ink.of("#DDDDDD")));
      PaintedColours colours = PaintedColours.of(document.finish(root));

      assertThat(colours.text()).singleElement().matches(ink -> near(ink, pale));
      assertThat(colours.figures()).singleElement().matches(ink -> ink.contrastWith(pale) < 2);
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

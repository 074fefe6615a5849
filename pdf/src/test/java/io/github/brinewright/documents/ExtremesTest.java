package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.proposal.VisitSheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Names as long as a job folder takes, in one word and in many, and more of everything. */
class ExtremesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final String WORD = "Wasserenthaertungsanlagenbesitzergemeinschaft".repeat(3);
  private static final String MANY =
      "the very long and winding household of many names ".repeat(3).strip();
  private static final String FORTY_FIXTURES =
      "1 bathtub 1 shower 1 lavatory 1 water_closet ".repeat(10).strip();
  private static final String EIGHT_UNITS =
      "unit_id,name,resin_ft3,dosages_lb_per_ft3,price\n"
          + ("A," + WORD + ",1,6 8,900\nB," + MANY + ",1.5,6 8,1200\nC,c,2,6,1500\n")
          + "D,d,2.5,6,1800\nE,e,3,6,2100\nF,f,4,6,2500\nG,g,5,6,3000\nH,h,6,6,3500\n";
  private static final String HOMES =
      "site_id,customer,street,town,hardness_gpg,people,fixtures\n"
          + ("X," + WORD + "," + MANY + "," + WORD + ",18,3,\n")
          + ("Y," + MANY + ",s,t,18,3," + FORTY_FIXTURES + "\n")
          + ("Z," + WORD + "," + WORD + ",t,150,12," + FORTY_FIXTURES + "\n");

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static JobFiles files(int width, int height) throws IOException {
    Map<String, String> files = new HashMap<>();
    files.put("units.csv", EIGHT_UNITS);
    files.put("sites.csv", HOMES);
    String dealer = "name=" + WORD + "\nstreet=" + MANY + "\nterms=" + MANY + "\n";
    files.put("dealer.properties", width == 0 ? dealer : dealer + "logo=picture.png\n");
    if (width > 0) {
      files.put("picture.png", picture(width, height));
    }
    return JobFiles.of(files);
  }

  /** A half transparent picture, in Base64. */
  private static String picture(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(width / 2, height / 2, 0x80FF0000);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }

  private static List<byte[]> documents(Job job, JobFiles files, QuotedHome home, Dealer dealer)
      throws IOException {
    Comparison comparison = job.compare(home);
    Map<String, String> cells = SiteCells.of(files, home.site().id()).orElseThrow();
    return List.of(
        new Proposal(comparison, job.study(comparison).orElse(null), dealer, DAY).toPdf(),
        new SettingsSheet(comparison, comparison.closest(), dealer, DAY).toPdf(),
        new ComparisonPage(comparison, dealer, DAY).toPdf(),
        new VisitSheet(
                dealer, job.tariffs(), cells, new CarriedJob("", DAY, Map.of("sites.csv", HOMES)))
            .toPdf());
  }

  @ParameterizedTest(name = "{2}, logo {0} x {1}")
  @CsvSource({"0, 0, en-US", "60, 900, fr-CA", "900, 60, es-US", "1, 1, en-US"})
  void nothingIsCutNorOverlapsNorLeavesThePage(int width, int height, String tag) throws Exception {
    JobFiles files = files(width, height);
    Job job = JobFolder.read(files).job().orElseThrow();
    assertThat(job.dealer().logo().isPresent()).isEqualTo(width > 0);
    assertThat(job.homes()).hasSize(3);
    for (QuotedHome home : job.homes()) {
      Dealer dealer = job.dealer().writing(Locale.forLanguageTag(tag));
      for (byte[] pdf : documents(job, files, home, dealer)) {
        assertThat(TextBoxes.of(pdf).outsideTheMargins()).isEmpty();
        assertThat(TextBoxes.of(pdf).overlaps()).isEmpty();
        assertThat(ReadAloud.of(pdf).outOfOrder()).isEmpty();
        assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
        assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
      }
    }
  }

  /** What a name loses to the edge of a page it has whole in the text that is read aloud. */
  @ParameterizedTest
  @CsvSource({"X", "Y"})
  void longNamesStandWholeInTheProposal(String id) throws Exception {
    Job job = JobFolder.read(files(0, 0)).job().orElseThrow();
    Comparison comparison = job.compare(job.home(id).orElseThrow());
    String aloud =
        ReadAloud.of(new Proposal(comparison, job.dealer(), DAY).toPdf())
            .toString()
            .replaceAll("\\s+", "");

    assertThat(aloud).contains(comparison.home().site().contact().name().replace(" ", ""));
    assertThat(aloud).contains(WORD, MANY.replace(" ", ""));
  }
}

package io.github.brinewright.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.exchange.DemoTown;
import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.exchange.ReopenException.Reason;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Proposals and forms opened again, and what cannot be. */
class ReopenedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final Job TOWN = DemoTown.job();
  private static final Proposals PROPOSALS = Proposals.of(TOWN);

  private interface Change {
    void make(PDDocument document) throws IOException;
  }

  private static byte[] changed(byte[] pdf, Change change) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      change.make(document);
      document.save(out);
      return out.toByteArray();
    }
  }

  /** Fills the fields by PDFBox, which writes values in its own way. */
  private static byte[] filled(byte[] form, Map<String, String> values) throws IOException {
    return changed(
        form,
        document -> {
          PDAcroForm fields = document.getDocumentCatalog().getAcroForm(null);
          for (Map.Entry<String, String> value : values.entrySet()) {
            fields.getField(value.getKey()).setValue(value.getValue());
          }
        });
  }

  /** A row of sites.csv; fixtures are counted in fields of their own. */
  private static Map<String, String> row(String id) throws IOException {
    return new TreeMap<>(SiteCells.of(JobFiles.in(DemoTown.FOLDER), id).orElseThrow());
  }

  private static Map<String, String> entries(String id) throws IOException {
    Map<String, String> cells = row(id);
    String fixtures = cells.remove("fixtures");
    String[] parts = fixtures == null ? new String[0] : fixtures.split(" ");
    for (int i = 0; i < parts.length; i += 2) {
      cells.put("fixtures_" + parts[i + 1], parts[i]);
    }
    return cells;
  }

  private static String json(Comparison comparison) {
    return ComparisonJson.one(comparison, Wording.of(Locale.US, UnitSystem.US));
  }

  private static Reason refusal(byte[] pdf) {
    return catchThrowableOfType(ReopenException.class, () -> Reopened.read(pdf)).reason();
  }

  private static QuotedHome home(String id) {
    return TOWN.home(id).orElseThrow();
  }

  static Stream<String> homes() {
    return TOWN.homes().stream().map(home -> home.site().id());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aProposalGivesTheSameComparisonAgain(String id) throws Exception {
    Reopened again = Reopened.read(PROPOSALS.write(home(id), DAY));

    assertThat(again.homeId()).isEqualTo(id);
    assertThat(again.date()).isEqualTo(DAY);
    assertThat(again.problems()).isEmpty();
    assertThat(again.visit()).isEmpty();
    assertThat(again.job().orElseThrow().homes()).hasSize(1);
    assertThat(json(again.comparison().orElseThrow())).isEqualTo(json(TOWN.compare(home(id))));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aProposalWrittenFromAReopenedOneHasTheSameBytes(String id) throws Exception {
    byte[] first = PROPOSALS.write(home(id), DAY);
    Reopened again = Reopened.read(first);

    assertThat(Proposals.of(again.job().orElseThrow()).write(again.home().orElseThrow(), DAY))
        .isEqualTo(first);
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aFilledFormGivesTheRow(String id) throws Exception {
    for (byte[] form :
        new byte[][] {filled(PROPOSALS.form(DAY), entries(id)), PROPOSALS.form(row(id), DAY)}) {
      Reopened visit = Reopened.read(form);

      Map<String, String> cells = new TreeMap<>(visit.visit().orElseThrow().cells());
      cells.values().removeIf(String::isEmpty);
      assertThat(cells).isEqualTo(row(id));
      assertThat(visit.homeId()).isEqualTo(id);
      assertThat(visit.problems()).isEmpty();
      assertThat(json(visit.comparison().orElseThrow())).isEqualTo(json(TOWN.compare(home(id))));
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aFormBegunWithAHomeGivesItsComparison(String id) throws Exception {
    Reopened begun = Reopened.read(PROPOSALS.form(home(id), DAY));
    assertThat(json(begun.comparison().orElseThrow())).isEqualTo(json(TOWN.compare(home(id))));
  }

  @Test
  void aBlankFormHasNoHomeAndSaysSoInTheWordsOfItsFields() throws Exception {
    Reopened blank = Reopened.read(PROPOSALS.form(DAY));

    assertThat(blank.homeId()).isEmpty();
    assertThat(blank.home()).isEmpty();
    assertThat(blank.comparison()).isEmpty();
    assertThat(blank.problems()).isNotEmpty();
    assertThat(blank.describe(blank.problems().get(0), "visit.pdf"))
        .startsWith("visit.pdf")
        .doesNotContain("sites.csv");
  }

  @Test
  void thePricesOfAnotherJobMayBeTaken() throws Exception {
    JobFiles today =
        JobFiles.of(
            Map.of(
                "units.csv",
                "unit_id,name,resin_ft3,dosages_lb_per_ft3,price\nN1,New,1.5,6,1234.56\n",
                "sites.csv",
                "site_id,hardness_gpg,people\nZ9,3,1\n"));
    Reopened again = Reopened.read(PROPOSALS.write(home("H02"), DAY)).atPricesOf(today);

    assertThat(again.problems())
        .as("H02 names a tariff of the demo town")
        .allSatisfy(problem -> assertThat(problem.column()).isEqualTo("tariff_id"));
    Reopened form =
        Reopened.read(
                filled(
                    PROPOSALS.form(DAY),
                    Map.of("site_id", "A", "hardness_gpg", "18", "people", "3")))
            .atPricesOf(today);
    Comparison comparison = form.comparison().orElseThrow();
    assertThat(comparison.home().site().id()).isEqualTo("A");
    assertThat(comparison.candidates())
        .allSatisfy(candidate -> assertThat(candidate.softener().id()).isEqualTo("N1"));
  }

  @Test
  void whatIsNoPdfIsRefused() {
    assertThat(refusal(new byte[0])).isEqualTo(Reason.NOT_A_PDF);
    assertThat(refusal("no pdf at all".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo(Reason.NOT_A_PDF);
  }

  @Test
  void aPdfThatIsCutOffIsRefused() {
    byte[] whole = PROPOSALS.write(home("H01"), DAY);
    assertThat(refusal("%PDF-1.7 and no more".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo(Reason.DAMAGED);
    assertThat(refusal(Arrays.copyOf(whole, 2_000))).isEqualTo(Reason.DAMAGED);
  }

  /** Bytes changed by lot: it opens or it is refused with a reason, and nothing else happens. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aDamagedPdfNeverFailsInAnotherWay(long seed) {
    Random lot = new Random(seed);
    byte[] whole = PROPOSALS.form(DAY);
    for (int i = 0; i < 40; i++) {
      byte[] damaged = Arrays.copyOf(whole, whole.length - lot.nextInt(whole.length / 2));
      for (int j = 0; j < 60; j++) {
        damaged[lot.nextInt(damaged.length)] = (byte) lot.nextInt(256);
      }
      try {
        Reopened.read(damaged);
      } catch (ReopenException refused) {
        assertThat(refused.reason()).isNotNull();
      }
    }
  }

  @Test
  void aLockedPdfIsRefused() throws Exception {
    byte[] locked =
        changed(
            PROPOSALS.write(home("H01"), DAY),
            document ->
                document.protect(
                    new StandardProtectionPolicy("owner", "reader", new AccessPermission())));
    assertThat(refusal(locked)).isEqualTo(Reason.DAMAGED);
  }

  @Test
  void aPdfWithoutDataIsRefused() {
    assertThat(refusal(PROPOSALS.withoutData().write(home("H01"), DAY))).isEqualTo(Reason.NO_DATA);
    assertThat(refusal(PROPOSALS.onePage().write(home("H01"), DAY))).isEqualTo(Reason.NO_DATA);
  }

  @Test
  void aFormThatLostItsFieldsIsRefused() throws Exception {
    byte[] flat =
        changed(
            PROPOSALS.form(DAY),
            document -> document.getDocumentCatalog().getAcroForm(null).flatten());
    assertThat(refusal(flat)).isEqualTo(Reason.FIELDS_LOST);
  }

  private static byte[] carrying(String json) throws IOException {
    return changed(
        PROPOSALS.write(home("H01"), DAY),
        document -> {
          var files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
          try (var out = files.get(CarriedJob.FILE).getEmbeddedFile().createOutputStream()) {
            out.write(json.getBytes(StandardCharsets.UTF_8));
          }
        });
  }

  /** A thousand zeros take about a byte in Deflate (RFC 1951). */
  @Test
  void anAttachmentThatUnfoldsWithoutEndIsDamage() throws Exception {
    byte[] bomb =
        changed(
            PROPOSALS.write(home("H01"), DAY),
            document -> {
              var files = document.getDocumentCatalog().getNames().getEmbeddedFiles();
              COSStream stream =
                  files.getNames().get(CarriedJob.FILE).getEmbeddedFile().getCOSObject();
              try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                byte[] zeros = new byte[1_000_000];
                for (int i = 0; i < 65; i++) {
                  out.write(zeros);
                }
              }
            });
    assertThat(bomb).hasSizeLessThan(1_000_000);
    assertThat(refusal(bomb)).isEqualTo(Reason.DAMAGED);
  }

  @Test
  void dataOfANewerVersionAreRefused() throws Exception {
    assertThat(refusal(carrying("{\"version\":2,\"date\":\"2026-05-02\",\"files\":{}}")))
        .isEqualTo(Reason.NEWER_VERSION);
  }

  @Test
  void dataOfAnotherFormAreRefused() throws Exception {
    assertThat(refusal(carrying("{}"))).isEqualTo(Reason.MALFORMED_DATA);
  }

  @Test
  void aPictureThatIsNoneIsAProblemOfTheJob() throws Exception {
    byte[] pdf =
        carrying(
            "{\"version\":1,\"site\":\"A\",\"date\":\"2026-05-02\",\"files\":"
                + "{\"dealer.properties\":\"logo=l.png\",\"l.png\":\"A\","
                + "\"sites.csv\":\"site_id,hardness_gpg,people\\nA,18,3\"}}");
    assertThat(Reopened.read(pdf).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.column()).isEqualTo("logo"));
  }

  @Test
  void aRevisionOfAnotherHomeIsRefused() throws Exception {
    Reopened earlier = Reopened.read(PROPOSALS.write(home("H01"), DAY));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PROPOSALS.since(earlier).write(home("H02"), DAY))
        .withMessageContaining("\"H01\"")
        .withMessageContaining("\"H02\"");
    Reopened blank = Reopened.read(PROPOSALS.form(DAY));
    assertThatIllegalArgumentException().isThrownBy(() -> PROPOSALS.since(blank));
  }
}

package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import com.opencsv.CSVReader;
import io.github.brinewright.document.PdfReader;
import io.github.brinewright.exchange.CarriedJob;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CommandLineTest {
  private static final String SITES =
      "site_id,customer,hardness_gpg,people\n" + "A1,Ann,18,3\n" + "B2,Ben,27,5\n";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeJob() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), SITES);
  }

  private int run(String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(args);
  }

  private static Map<String, Object> json(String text) throws IOException {
    return JSON.std.mapFrom(text);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> site(Map<String, Object> json) {
    return (Map<String, Object>) json.get("site");
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> firstCandidate(Map<String, Object> json) {
    return ((List<Map<String, Object>>) json.get("candidates")).get(0);
  }

  @Test
  void theTradesChainComesOutAsJson() throws IOException {
    int code =
        run(
            "compare --hardness 18gpg --iron 0.8 --manganese 0.2 --people 3 --rated-grains 32000"
                .concat(" --control clock --refill-gpm 0.5 --format json")
                .split(" "));

    Map<String, Object> json = json(out.toString());
    assertThat(code).isZero();
    assertThat(site(json))
        .containsEntry("compensatedHardnessGpg", 22.4)
        .containsEntry("dailyLoadGrains", 5040);
    assertThat(firstCandidate(json))
        .containsEntry("usableCapacityGrains", 25600)
        .containsEntry("daysBetweenRegenerations", 5)
        .containsEntry("saltPerRegenerationLb", 7.68)
        .containsEntry("brineRefillMinutes", 5.12)
        .containsEntry("brineRefillMinutesSet", 5.2)
        .containsEntry("saltGivenLb", 7.8);
    assertThat(json).containsKey("recommended");
  }

  @Test
  void aHardnessNeedsItsUnit() {
    assertThat(run("compare", "--hardness", "18", "--people", "3")).isEqualTo(2);
    assertThat(err.toString()).contains("\"18\" is not a hardness", "22gpg");
  }

  @Test
  void hardnessUnitsAgree() throws IOException {
    run("compare", "--hardness", "300mg/L", "--people", "2", "--format", "json");
    Object first = site(json(out.toString())).get("hardnessGpg");
    out.getBuffer().setLength(0);
    run("compare", "--hardness", "30fH", "--people", "2", "--format", "json");
    assertThat(site(json(out.toString())).get("hardnessGpg")).isEqualTo(first);
  }

  @Test
  void wrongUsageEndsWithTwo() {
    assertThat(run()).isEqualTo(2);
    assertThat(run("compare")).isEqualTo(2);
    assertThat(run("compare", folder.toString(), "--hardness", "3gpg")).isEqualTo(2);
    assertThat(run("compare", "--people", "0", "--hardness", "10gpg")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--control", "clock")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--rated-grains", "-5")).isEqualTo(2);
    assertThat(run("compare", "--hardness", "10gpg", "--resin-ft3", "1", "--dosage", "99"))
        .isEqualTo(2);
    assertThat(run("propose", folder.toString(), "--all")).isEqualTo(2);
    assertThat(run("propose", folder.toString(), "--out", "x")).isEqualTo(2);
    assertThat(run("compare", folder.resolve("nowhere").toString())).isEqualTo(2);
    assertThat(run("compare", folder.toString(), "--site", "Z9")).isEqualTo(2);
    assertThat(err.toString())
        .contains("no usable home \"Z9\"; homes are: A1, B2")
        .doesNotContain("Exception")
        .doesNotContain("\tat ");
  }

  @Test
  void proposalsAreWrittenForAllHomes() throws IOException {
    Path target = folder.resolve("out/deep");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isZero();

    assertThat(names(target)).containsExactly("proposal-A1.pdf", "proposal-B2.pdf");
    assertThat(out.toString()).contains("Proposals written to " + target + ": 2");
    assertThat(Files.readAllBytes(target.resolve("proposal-A1.pdf"))).startsWith("%PDF".getBytes());
  }

  @Test
  void aBadHomeIsSkippedAndCountedAndTheOthersAreDone() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), SITES + "C3,Cyd,0,4\n");
    Path target = folder.resolve("out");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isEqualTo(1);

    assertThat(names(target)).containsExactly("proposal-A1.pdf", "proposal-B2.pdf");
    assertThat(out.toString()).contains(": 2; homes refused: 1");
    assertThat(err.toString()).contains("sites.csv, row 4, column hardness_gpg");
  }

  @Test
  void aBadPriceListStopsEverythingBeforeAnythingIsWritten() throws IOException {
    Files.writeString(folder.resolve("units.csv"), "unit_id,price\nU1,5\n");
    Path target = folder.resolve("out");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isEqualTo(1);

    assertThat(target).doesNotExist();
    assertThat(err.toString()).contains("units.csv, row 2", "Nothing was written.");
  }

  @Test
  void customerTextNeverBecomesAPathOrAFormula() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,customer,hardness_gpg,people\nA1,../../etc/passwd,18,3\n");
    Path target = folder.resolve("out");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isZero();
    assertThat(names(target)).containsExactly("proposal-A1.pdf");
  }

  @Test
  void aProposalCanBeOpenedAgain() throws IOException {
    Path target = folder.resolve("out");
    run("propose", folder.toString(), "--all", "--out", target.toString());
    out.getBuffer().setLength(0);
    assertThat(run("compare", folder.toString(), "--site", "B2", "--format", "json")).isZero();
    String fromFolder = out.toString();
    out.getBuffer().setLength(0);

    String pdf = target.resolve("proposal-B2.pdf").toString();
    assertThat(run("compare", pdf, "--format", "json")).isZero();

    assertThat(out.toString()).isEqualTo(fromFolder);
    assertThat(run("propose", pdf, "--all", "--out", target.resolve("again").toString())).isZero();
    assertThat(names(target.resolve("again"))).containsExactly("proposal-B2.pdf");
  }

  @Test
  void aRevisedQuoteSaysWhatHasChanged() throws IOException {
    String job = folder.toString();
    Path first = folder.resolve("first");
    run("propose", job, "--all", "--out", first.toString(), "--date", "2026-05-02");
    Files.writeString(folder.resolve("sites.csv"), SITES.replace("A1,Ann,18,3", "A1,Ann,21,3"));
    String earlier = first.resolve("proposal-A1.pdf").toString();
    String second = folder.resolve("second").toString();

    assertThat(run("propose", job, "--site", "A1", "--since", earlier, "--out", second)).isZero();

    try (PDDocument revised = Loader.loadPDF(folder.resolve("second/proposal-A1.pdf").toFile())) {
      String text = new PDFTextStripper().getText(revised).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("What changed since May 2, 2026")
          .contains("Hardness of the water 18.0 gpg 21.0 gpg");
    }
    assertThat(run("propose", job, "--site", "B2", "--since", earlier, "--out", second))
        .isEqualTo(1);
    assertThat(err.toString()).contains("is about home \"A1\", not \"B2\"");
    assertThat(run("propose", job, "--all", "--since", earlier, "--out", second)).isEqualTo(2);
  }

  private void writeLogo(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    ImageIO.write(image, "png", folder.resolve("logo.png").toFile());
    Files.writeString(folder.resolve("dealer.properties"), "logo=logo.png\naccent=#FFE000\n");
  }

  @Test
  void aLogoIsDrawnAndCarriedAndALightColourIsDarkenedWithANote() throws IOException {
    Path target = folder.resolve("out");
    for (int height : new int[] {40, 3_000}) {
      writeLogo(300, height);
      assertThat(run("propose", folder.toString(), "--site", "A1", "--out", target.toString()))
          .isZero();
      assertThat(run("compare", target.resolve("proposal-A1.pdf").toString())).isZero();
    }
    assertThat(err.toString()).contains("#FFE000 is too light");
  }

  @Test
  void aLogoThatIsNoPictureIsExplained() throws IOException {
    Files.writeString(folder.resolve("logo.png"), "not a picture");
    Files.writeString(folder.resolve("dealer.properties"), "logo=logo.png\n");
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("dealer.properties, column logo")
        .contains("no PNG or JPEG");

    Files.writeString(folder.resolve("dealer.properties"), "logo=../secret.png\n");
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("is not in the job folder");
  }

  @Test
  void aProposalCarriesNothingOfOtherCustomers() throws IOException {
    Path target = folder.resolve("out");
    run("propose", folder.toString(), "--all", "--out", target.toString());
    byte[] pdf = Files.readAllBytes(target.resolve("proposal-B2.pdf"));
    byte[] json = PdfReader.attachment(pdf, CarriedJob.FILE).orElseThrow();

    assertThat(new String(json, StandardCharsets.UTF_8)).contains("Ben").doesNotContain("Ann");
    assertThat(CarriedJob.fromJson(json).site()).contains("B2");
  }

  @Test
  void aProposalWithoutDataCannotBeOpenedAgain() throws IOException {
    Path target = folder.resolve("out");
    run("propose", folder.toString(), "--all", "--out", target.toString(), "--without-data");
    err.getBuffer().setLength(0);

    assertThat(run("compare", target.resolve("proposal-A1.pdf").toString())).isEqualTo(2);
    assertThat(err.toString()).contains("neither a folder that holds sites.csv nor a proposal");
  }

  @Test
  void aFileThatIsNoPdfIsExplained() throws IOException {
    Path file = Files.writeString(folder.resolve("x.pdf"), "no pdf at all");
    assertThat(run("compare", file.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("is neither a folder that holds sites.csv nor a proposal");

    Files.writeString(file, "%PDF-1.7 and no more");
    assertThat(run("compare", file.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("cannot be opened");
  }

  @Test
  void aFolderInPlaceOfAFileIsExplained() {
    String there = folder.toString();
    assertThat(run("form", there, "--out", there)).isEqualTo(2);
    assertThat(err.toString()).contains(there + " is a folder; name a file in it");
  }

  @Test
  void checkCountsWhatItFinds() throws IOException {
    assertThat(run("check", folder.toString())).isZero();
    assertThat(out.toString()).contains("homes 2");

    Files.writeString(folder.resolve("sites.csv"), SITES + "A1,Cyd,0,4\n");
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(out.toString()).contains("Problems: 2; homes that cannot be done: 1");
  }

  @Test
  void csvHasARowForEachCandidateWithTheNamesOfJson() throws Exception {
    assertThat(run("compare", folder.toString(), "--format", "csv")).isZero();

    try (CSVReader csv = new CSVReader(new StringReader(out.toString()))) {
      List<String[]> rows = csv.readAll();
      assertThat(rows.get(0)).contains("siteId", "saltPerRegenerationLb", "lifeCostTotal");
      assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
      assertThat(rows.size()).isGreaterThan(20);
    }
  }

  @Test
  void simulatedYearsStandInEveryFormat() throws Exception {
    String job = folder.toString();
    assertThat(run("compare", job, "--site", "A1", "--simulate", "20")).isZero();
    assertThat(out.toString()).contains("20 simulated years", "days out of soft");
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--simulate", "20", "--format", "csv")).isZero();
    assertThat(out.toString()).contains("simulatedSaltLb");
    out.getBuffer().setLength(0);
    assertThat(run("compare", job, "--site", "A1", "--simulate", "20", "--format", "json"))
        .isZero();
    assertThat(firstCandidate(json(out.toString()))).containsKeys("year", "undominated");
    assertThat(run("compare", job, "--simulate", "-1")).isEqualTo(2);
  }

  @Test
  void aSettingsSheetIsWrittenForTheUnitAskedFor() throws IOException {
    String job = folder.toString();
    Path sheet = folder.resolve("sheets/a1.pdf");
    assertThat(run("settings", job, "--site", "A1", "--unit", "bed-1", "--out", sheet.toString()))
        .isZero();
    assertThat(Files.readAllBytes(sheet)).startsWith("%PDF".getBytes());

    Path none = folder.resolve("none.pdf");
    assertThat(
            run(
                "settings",
                job,
                "--site",
                "A1",
                "--unit",
                "bed-1",
                "--dosage",
                "7",
                "--out",
                none.toString()))
        .isEqualTo(2);
    assertThat(none).doesNotExist();
    assertThat(err.toString()).contains("there is no unit \"bed-1\" with that dosage");
  }

  @Test
  void theTableMarksTheRecommendedInWords() {
    assertThat(run("compare", folder.toString(), "--site", "A1")).isZero();
    assertThat(out.toString()).contains("RECOMMENDED", "keeps all", "compensated hardness 18.0");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}

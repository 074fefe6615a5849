package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReaderHeaderAware;
import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** All homes of a folder at once. */
class BatchTest extends CommandTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);

  private Map<String, Map<String, String>> summary(Path target) throws Exception {
    Map<String, Map<String, String>> rows = new HashMap<>();
    String csv = Files.readString(target.resolve("summary.csv"));
    try (CSVReaderHeaderAware in = new CSVReaderHeaderAware(new StringReader(csv))) {
      for (Map<String, String> row = in.readMap(); row != null; row = in.readMap()) {
        rows.put(row.get("siteId"), row);
      }
    }
    return rows;
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void everyHomeHasALineInTheSummaryWithWhatTheCommandComparesForIt() throws Exception {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,customer,hardness_gpg,people,water_source,e_coli,bathrooms\n"
            + "A1,Ann,18,3,,,\nB2,Ben,27,5,private_well,found,\nC3,Cyd,9,0,,,\nD4,Dot,2,2,,,\n");
    Path target = folder.resolve("to");
    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isEqualTo(1);

    Map<String, Map<String, String>> rows = summary(target);
    Job job = JobFolder.read(folder).job().orElseThrow();
    var best = job.compare(job.home("A1").orElseThrow()).recommended().orElseThrow();
    assertThat(rows).containsOnlyKeys("A1", "B2", "D4", "sites.csv:4");
    assertThat(rows.get("A1"))
        .containsEntry("customer", "Ann")
        .containsEntry("siteVerdict", "ready")
        .containsEntry("recommended", best.softener().name())
        .containsEntry("priceTotal", best.quote().total().getAmount().toPlainString())
        .containsEntry("file", "proposal-A1.pdf");
    assertThat(rows.get("B2"))
        .containsEntry("siteVerdict", "treat_first")
        .containsEntry("recommended", "");
    assertThat(rows.get("B2").get("siteVerdictReasons")).contains("e-coli-found");
    assertThat(rows.get("D4")).containsEntry("siteVerdict", "soft_enough");
    assertThat(rows.get("sites.csv:4").get("notWritten")).contains("row 4, column people");

    assertThat(text(target.resolve("summary.pdf")))
        .startsWith(job.dealer().name())
        .containsSubsequence(
            "4 homes at a glance",
            "Could not be done: 1",
            "sites.csv:4",
            "Treat the water first: 1",
            "B2 Ben",
            "Ready for a softener: 1",
            "A1 Ann",
            "The water is soft enough: 1",
            "D4 Dot")
        .contains(best.softener().name());
  }

  @Test
  void oneHomeHasNoSummary() throws IOException {
    Path target = folder.resolve("to");
    run("propose", folder.toString(), "--site", "A1", "--out", target.toString());
    assertThat(names(target)).containsExactly("proposal-A1.pdf");
  }

  @Test
  void aHomeThatCannotBeWrittenIsSaidAndTheOthersAreThere() throws Exception {
    Path target = Files.createDirectories(folder.resolve("to"));
    Files.createDirectories(target.resolve("proposal-A1.pdf"));
    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isEqualTo(1);

    assertThat(err.toString()).contains("home A1: not written: ", "is a folder");
    assertThat(names(target))
        .containsExactly("proposal-A1.pdf", "proposal-B2.pdf", "summary.csv", "summary.pdf");
    assertThat(summary(target).get("A1").get("notWritten")).contains("is a folder");
  }

  /** The prices change between reading and writing: print and carried data are of one state. */
  @Test
  void whatIsCarriedIsWhatWasComputedWith() throws IOException, ReopenException {
    Path units = folder.resolve("units.csv");
    String list = "unit_id,price,resin_ft3,dosages_lb_per_ft3\nU,%s,1.5,6\n";
    Files.writeString(units, list.formatted("1000.00"));
    Job job = JobFolder.read(folder).job().orElseThrow();
    Files.writeString(units, list.formatted("9000.00"));
    Files.writeString(folder.resolve("sites.csv"), "site_id,hardness_gpg,people\nA1,40,1\n");

    byte[] pdf = Proposals.of(job).write(job.home("A1").orElseThrow(), DAY);
    Job again = Reopened.read(pdf).reading().job().orElseThrow();
    assertThat(again.prices()).isEqualTo(job.prices());
    assertThat(again.home("A1")).isEqualTo(job.home("A1"));
    assertThat(JobFolder.read(folder).job().orElseThrow().prices()).isNotEqualTo(job.prices());
  }

  @Test
  void theTimeLeftStandsBesideTheBarOnceItIsWorthKnowing() {
    assertThat(Progress.line(1, 3, Duration.ofMillis(300)))
        .startsWith("[##########  ")
        .doesNotContain("left");
    assertThat(Progress.line(10, 40, Duration.ofSeconds(30))).contains("10/40 1:30 left");
  }
}

package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.exchange.ReopenException.Reason;
import io.github.brinewright.proposal.Reopened;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Proposals as files: written, opened again, revised, and what they carry. */
class ProposalFilesTest extends CommandTest {
  @Test
  void proposalsAreWrittenForAllHomes() throws IOException {
    Path target = folder.resolve("out/deep");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isZero();

    assertThat(documents(target)).containsExactly("proposal-A1.pdf", "proposal-B2.pdf");
    assertThat(out.toString()).contains("Proposals written to " + target + ": 2");
    assertThat(Files.readAllBytes(target.resolve("proposal-A1.pdf"))).startsWith("%PDF".getBytes());
  }

  @Test
  void aBadHomeIsSkippedAndCountedAndTheOthersAreDone() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), SITES + "C3,Cyd,0,4\n");
    Path target = folder.resolve("out");

    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isEqualTo(1);

    assertThat(documents(target)).containsExactly("proposal-A1.pdf", "proposal-B2.pdf");
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
          .contains("What changed since revision 1, of May 2, 2026")
          .contains("Hardness of the water 18.0 gpg 21.0 gpg");
    }
    String third = folder.resolve("third").toString();
    assertThat(run("propose", job, "--site", "B2", "--since", earlier, "--out", third))
        .isEqualTo(2);
    assertThat(err.toString()).contains("is about home \"A1\", not \"B2\"");
    assertThat(run("propose", job, "--all", "--since", earlier, "--out", third)).isEqualTo(2);
    assertThat(run("propose", job, "--site", "A1", "--since", job, "--out", third)).isEqualTo(2);
    assertThat(err.toString()).contains("--since takes a proposal that carries its data");
    assertThat(Path.of(third)).doesNotExist();
  }

  private int propose(Path target) {
    out.getBuffer().setLength(0);
    return run(
        "propose",
        folder.toString(),
        "--site",
        "A1",
        "--out",
        target.toString(),
        "--date",
        "2026-05-02");
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void anEarlierFileIsNeverOverwritten() throws IOException {
    Path target = folder.resolve("out");
    assertThat(propose(target)).isZero();
    byte[] first = Files.readAllBytes(target.resolve("proposal-A1.pdf"));
    assertThat(propose(target)).isZero();
    assertThat(names(target)).containsExactly("proposal-A1.pdf");
    assertThat(out.toString()).contains("proposal-A1.pdf stands already", ": 0; unchanged: 1");

    Files.writeString(folder.resolve("sites.csv"), SITES.replace("A1,Ann,18,3", "A1,Ann,21,3"));
    for (int again = 0; again < 2; again++) {
      assertThat(propose(target)).isZero();
      assertThat(names(target)).containsExactly("proposal-A1-r2.pdf", "proposal-A1.pdf");
    }
    assertThat(Files.readAllBytes(target.resolve("proposal-A1.pdf"))).isEqualTo(first);
    assertThat(text(target.resolve("proposal-A1.pdf"))).doesNotContain("Revision");
    assertThat(text(target.resolve("proposal-A1-r2.pdf"))).contains("Revision 2 · May 2, 2026");
  }

  @Test
  void aRevisedFileSaysWhichOneItRevisesAndOpensAsThatRevision() throws IOException {
    Path target = folder.resolve("out");
    propose(target);
    Files.writeString(folder.resolve("sites.csv"), SITES.replace("A1,Ann,18,3", "A1,Ann,21,3"));
    propose(target);
    assertThat(out.toString())
        .contains("proposal-A1-r2.pdf is a new revision of proposal-A1.pdf, which stays");

    String second = target.resolve("proposal-A1-r2.pdf").toString();
    String again = folder.resolve("again").toString();
    assertThat(run("propose", second, "--out", again, "--date", "2026-05-02")).isZero();
    assertThat(folder.resolve("again/proposal-A1-r2.pdf"))
        .hasSameBinaryContentAs(target.resolve("proposal-A1-r2.pdf"));

    Files.writeString(folder.resolve("sites.csv"), SITES.replace("A1,Ann,18,3", "A1,Ann,24,3"));
    assertThat(
            run(
                "propose",
                folder.toString(),
                "--site",
                "A1",
                "--since",
                second,
                "--out",
                target.toString()))
        .isZero();
    assertThat(text(target.resolve("proposal-A1-r3.pdf")))
        .contains("What changed since revision 2, of May 2, 2026");
  }

  @Test
  void theRevisionOfARowIsWhereCountingBegins() throws IOException {
    Path target = folder.resolve("out");
    Files.writeString(
        folder.resolve("sites.csv"), "site_id,hardness_gpg,people,revision\nA1,18,3,4\n");
    propose(target);
    assertThat(names(target)).containsExactly("proposal-A1-r4.pdf");

    Files.writeString(
        folder.resolve("sites.csv"), "site_id,hardness_gpg,people,revision\nA1,19,3,4\n");
    propose(target);
    assertThat(names(target)).containsExactly("proposal-A1-r4.pdf", "proposal-A1-r5.pdf");
  }

  @Test
  void aQuoteIsPrintedWithItsRecord() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,hardness_gpg,people,phone,email,quote_number,rep,notes\n"
            + "A1,18,3,555-0199,ann@home.example,Q-77,Tamsin Orrel,Ring twice.\n");
    Files.writeString(
        folder.resolve("dealer.properties"),
        "included=A bypass.\nnot_included=A permit.\nwarranty=Two years.\nlead_time=A week.\n"
            + "warranty_es=Dos años.\n");
    Path target = folder.resolve("out");
    propose(target);

    assertThat(text(target.resolve("proposal-A1.pdf")))
        .contains("555-0199 · ann@home.example · Quote Q-77 · May 2, 2026 · Valid until")
        .contains("Your contact: Tamsin Orrel")
        .contains("A bypass.", "A permit.", "Two years.", "A week.", "Ring twice.")
        .doesNotContain("Dos años.");
  }

  @Test
  void aNameInAnotherScriptIsPrintedAsTheRepWroteItAndOthersAsTheyAre() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,customer,customer_latin,hardness_gpg,people\n"
            + "A1,王小明,Wang Xiaoming,18,3\nB2,Γιώργος Щукин Nguyễn,,18,3\n");
    Path target = folder.resolve("out");
    assertThat(run("propose", folder.toString(), "--all", "--out", target.toString())).isZero();

    assertThat(text(target.resolve("proposal-A1.pdf")))
        .contains("Wang Xiaoming")
        .doesNotContain("王", "U+");
    assertThat(text(target.resolve("proposal-B2.pdf"))).contains("Γιώργος Щукин Nguyễn");
  }

  @Test
  void aDealersOwnPageIsPrintedAfterTheSignatureAndCarried() throws IOException {
    ImageIO.write(
        new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB),
        "png",
        folder.resolve("van.png").toFile());
    String page =
        "page_1_title=About us\npage_1_title_es=Quiénes somos\npage_1_text=We are invented.\n"
            + "page_1_picture=van.png\n";
    Files.writeString(folder.resolve("dealer.properties"), page);
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("dealer.properties, column page_1_picture_alt: is empty");

    Files.writeString(
        folder.resolve("dealer.properties"), page + "page_1_picture_alt=A van beside a door\n");
    Path target = folder.resolve("out");
    assertThat(propose(target)).isZero();
    Path pdf = target.resolve("proposal-A1.pdf");
    assertThat(text(pdf).indexOf("We are invented."))
        .isGreaterThan(text(pdf).indexOf("Please read before"))
        .isLessThan(text(pdf).indexOf("Appendix: "));
    String again = folder.resolve("again").toString();
    assertThat(run("propose", pdf.toString(), "--out", again, "--date", "2026-05-02")).isZero();
    assertThat(folder.resolve("again/proposal-A1.pdf")).hasSameBinaryContentAs(pdf);
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
  void aProposalCarriesNothingOfOtherCustomers() throws Exception {
    Path target = folder.resolve("out");
    run("propose", folder.toString(), "--all", "--out", target.toString());
    CarriedJob carried =
        Reopened.read(Files.readAllBytes(target.resolve("proposal-B2.pdf"))).carried();

    assertThat(carried.site()).isEqualTo("B2");
    assertThat(carried.files().toString()).contains("Ben").doesNotContain("Ann");
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NOT_A_PDF      | is neither a folder that holds sites.csv nor a proposal or a form",
        "NO_DATA        | is neither a folder that holds sites.csv nor a proposal or a form",
        "DAMAGED        | cannot be opened: it is cut off, locked or damaged (details)",
        "FIELDS_LOST    | has lost its fields, as after printing to a new file",
        "NEWER_VERSION  | newer version of this program (details); open it with that one",
        "MALFORMED_DATA | carries data that cannot be read (details); write it again"
      })
  void everyReasonThatADocumentStaysClosedHasItsWords(Reason reason, String words) {
    assertThat(PdfInput.inWords(new ReopenException(reason, "details", null))).contains(words);
  }
}

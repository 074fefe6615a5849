package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDRadioButton;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a customer asked for, quoted beside what is recommended. */
class WishTest extends CommandTest {
  private Path target;

  @BeforeEach
  void priceList() throws IOException {
    Files.writeString(
        folder.resolve("units.csv"),
        "unit_id,price,resin_ft3,dosages_lb_per_ft3,controls\n"
            + "SMALL,900,1,6,clock metered_at_night\n"
            + "MIDDLE,1100,1.5,6 8,metered_at_night\n"
            + "TINY,500,0.5,6,clock\n"
            + "LARGE,2400,3,6 8,metered_at_night\n");
    Files.writeString(folder.resolve("dealer.properties"), "cancellation_forms_attached=yes\n");
    target = folder.resolve("out");
  }

  private int propose(String... more) {
    String[] all = new String[6 + more.length];
    System.arraycopy(
        new String[] {"propose", folder.toString(), "--site", "A1", "--out", target.toString()},
        0,
        all,
        0,
        6);
    System.arraycopy(more, 0, all, 6, more.length);
    return run(all);
  }

  @Test
  void whatIsAskedForStandsBesideTheRecommendationAndTheDifferenceIsSaid() throws IOException {
    assertThat(propose("--unit", "LARGE", "--dosage", "8")).isZero();

    try (PDDocument document = Loader.loadPDF(target.resolve("proposal-A1.pdf").toFile())) {
      PDRadioButton choice =
          (PDRadioButton) document.getDocumentCatalog().getAcroForm(null).getField("package");
      assertThat(choice.getOnValues()).contains("recommended", "wished");
      assertThat(new PDFTextStripper().getText(document))
          .contains("As you asked:", "What sets them apart", "more to buy");
    }
  }

  @Test
  void whatIsNotSoldIsWrongUsageAndNothingIsWritten() {
    assertThat(propose("--unit", "HUGE")).isEqualTo(2);
    assertThat(err.toString()).contains("HUGE", "units are:", "LARGE");
    assertThat(propose("--control", "clock")).isEqualTo(2);
    assertThat(err.toString()).contains("go with --unit");
    assertThat(propose("--unit", "LARGE", "--control", "sundial")).isEqualTo(2);
    assertThat(err.toString()).contains("sundial", "metered_at_night");
    assertThat(propose("--unit", "LARGE", "--one-page")).isEqualTo(2);
    assertThat(target.resolve("proposal-A1.pdf")).doesNotExist();
  }

  @Test
  void whatBreaksALimitIsNotQuoted() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"), "site_id,customer,hardness_gpg,people\nA1,Ann,60,9\n");

    assertThat(propose("--unit", "TINY")).isEqualTo(1);
    assertThat(err.toString()).contains("cannot be quoted", "it breaks");
    assertThat(target.resolve("proposal-A1.pdf")).doesNotExist();
  }

  @Test
  void withoutTheFormsOfCancellationThereIsNoPlaceToSign() throws IOException {
    Files.writeString(folder.resolve("dealer.properties"), "name=Weir Street Water\n");

    assertThat(propose()).isZero();
    try (PDDocument document = Loader.loadPDF(target.resolve("proposal-A1.pdf").toFile())) {
      assertThat(document.getDocumentCatalog().getAcroForm(null)).isNull();
      assertThat(new PDFTextStripper().getText(document)).contains("without a place to sign");
    }
  }

  @Test
  void aDepositAboveWhatThePlaceAllowsIsAnErrorOfTheHome() throws IOException {
    Files.writeString(
        folder.resolve("dealer.properties"),
        "cancellation_forms_attached=yes\ndeposit_percent=25\nplace=US-CA\n");
    Files.writeString(
        folder.resolve("units.csv"),
        "unit_id,price,resin_ft3,dosages_lb_per_ft3,controls,certified_grains_per_lb\n"
            + "SMALL,900,1,6,metered_at_night,4200\nMIDDLE,1100,1.5,6,metered_at_night,4200\n");

    assertThat(propose()).isEqualTo(1);
    assertThat(err.toString()).contains("home A1: not written", "7159.5", "lower deposit_percent");
    assertThat(target.resolve("proposal-A1.pdf")).doesNotExist();
  }
}

package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables as spreadsheets, from and to the command line. */
class TableCommandTest extends CommandTest {
  private static final String UNITS =
      "unit_id,price,resin_ft3,dosages_lb_per_ft3\nU1,990.50,1.5,6 8\nU2,1200,2,6\n";

  @Test
  void aSpreadsheetGivesTheProposalOfTheCsv() throws IOException {
    Path units = folder.resolve("units.csv");
    Files.writeString(units, UNITS);
    Path csv = folder.resolve("csv");
    Path sheet = folder.resolve("sheet");
    String job = folder.toString();
    String[] propose = {"propose", job, "--site", "A1", "--date", "2026-05-02", "--out", ""};
    propose[7] = csv.toString();
    assertThat(run(propose)).isZero();

    Path xlsx = folder.resolve("units.xlsx");
    assertThat(run("table", units.toString(), "--out", xlsx.toString())).isZero();
    Files.delete(units);
    propose[7] = sheet.toString();
    assertThat(run(propose)).as(err.toString()).isZero();

    assertThat(text(sheet)).isEqualTo(text(csv));
    assertThat(run("table", xlsx.toString(), "--out", units.toString())).isZero();
    assertThat(Files.readString(units)).isEqualTo(UNITS.replace("990.50", "990.50"));
  }

  /** What is printed; the data that are carried may write a number another way. */
  private static String text(Path folder) throws IOException {
    try (var document =
        org.apache.pdfbox.Loader.loadPDF(folder.resolve("proposal-A1.pdf").toFile())) {
      return new org.apache.pdfbox.text.PDFTextStripper().getText(document);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "nowhere.csv --out x.xlsx | there is no file nowhere.csv",
        "SITES --out x.txt | one of the two files is to end in .csv, the other in .xlsx",
        "SITES --out x.csv | one of the two files is to end in .csv"
      })
  void wrongUseIsNamed(String args, String said) {
    String typed = args.replace("SITES", folder.resolve("sites.csv").toString());
    assertThat(run(("table " + typed).split(" "))).isEqualTo(2);
    assertThat(err.toString()).contains(said);
  }

  @Test
  void whatIsNoSpreadsheetIsSaidToBeNone() throws IOException {
    Path fake = Files.writeString(folder.resolve("units.xlsx"), "unit_id,price");
    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("units.xlsx: cannot be read: is damaged, locked or no");
    assertThat(run("table", fake.toString(), "--out", folder.resolve("u.csv").toString()))
        .isEqualTo(1);
    assertThat(folder.resolve("u.csv")).doesNotExist();
  }
}

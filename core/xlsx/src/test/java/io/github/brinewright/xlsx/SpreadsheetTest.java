package io.github.brinewright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.opencsv.CSVReader;
import com.opencsv.CSVWriter;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemCode;
import io.github.brinewright.job.TableFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.NodeList;

class SpreadsheetTest {
  private static final Path TOWN = Path.of("..", "..", "samples", "job");
  private static final Spreadsheet FORMAT = new Spreadsheet();

  @TempDir Path folder;

  private static List<String[]> rows(String csv) throws Exception {
    try (CSVReader in = new CSVReader(new StringReader(csv))) {
      return in.readAll();
    }
  }

  private static String csv(List<List<String>> rows) throws IOException {
    StringWriter text = new StringWriter();
    try (CSVWriter out = new CSVWriter(text)) {
      rows.forEach(row -> out.writeNext(row.toArray(String[]::new), false));
    }
    return text.toString();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> text =
        Arbitraries.oneOf(
            Arbitraries.of("", "0", "1.50", "0.1", "007", "1e5", "-3", "1,000", "2026-03-31"),
            Arbitraries.strings().withChars("aé \"',;=€汉0.9").ofMaxLength(12).map(String::strip),
            Arbitraries.bigDecimals().ofScale(4).map(Object::toString));
    return text.list()
        .ofSize(3)
        .list()
        .ofMinSize(1)
        .ofMaxSize(8)
        .map(rows -> Stream.concat(Stream.of(List.of("a", "b", "c")), rows.stream()).toList());
  }

  @Property(tries = 200)
  void whatIsWrittenIsReadAgainToTheLetter(@ForAll("tables") List<List<String>> table)
      throws Exception {
    List<String[]> again = rows(FORMAT.toCsv(FORMAT.fromCsv(csv(table), "t")));
    for (int i = 0; i < table.size(); i++) {
      List<String> expected = table.get(i);
      boolean empty = expected.stream().allMatch(String::isEmpty);
      if (i < again.size()) {
        assertThat(again.get(i)).containsExactlyElementsOf(expected);
      } else {
        assertThat(empty).isTrue();
      }
    }
  }

  @Test
  void theDemoTownFromSpreadsheetsIsTheTown() throws Exception {
    copy(TOWN, folder);
    for (String name : JobFiles.NAMES) {
      Path file = folder.resolve(name);
      if (name.endsWith(".csv") && Files.exists(file)) {
        String table = name.substring(0, name.length() - 4);
        Files.write(folder.resolve(table + ".xlsx"), FORMAT.fromCsv(Files.readString(file), table));
        Files.delete(file);
      }
    }

    JobReading reading = JobFolder.read(folder);
    assertThat(reading.problems()).isEmpty();
    Job job = reading.job().orElseThrow();
    Job town = JobFolder.read(TOWN).job().orElseThrow();
    assertThat(job).isEqualTo(town);
    assertThat(job.files().has("units.csv")).isTrue();
  }

  @Test
  void aProblemNamesTheSpreadsheetItsRowAndColumn() throws Exception {
    Files.writeString(folder.resolve("sites.csv"), "site_id,people,hardness_gpg\nA1,2,9\n");
    Files.write(
        folder.resolve("units.xlsx"),
        FORMAT.fromCsv("unit_id,price,resin_ft3,dosages_lb_per_ft3\nU,x,1,6\n\nV,9,99,6\n", "u"));

    assertThat(JobFolder.read(folder).problems())
        .extracting(Problem::toString)
        .anySatisfy(text -> assertThat(text).startsWith("units.xlsx, row 2, column price: \"x\""))
        .anySatisfy(
            text -> assertThat(text).startsWith("units.xlsx, row 4, column resin_ft3: \"99\""))
        .hasSize(2);
  }

  @Test
  void aTableInTwoFormsIsRefused() throws Exception {
    copy(TOWN, folder);
    Files.write(folder.resolve("units.xlsx"), FORMAT.fromCsv("unit_id,price\nU,1\n", "units"));

    JobReading reading = JobFolder.read(folder);
    assertThat(reading.job()).isEmpty();
    assertThat(reading.problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.TABLE_TWICE);
    assertThat(reading.problems().get(0).toString())
        .isEqualTo(
            "units.xlsx: stands beside units.csv, and only one of them can be meant; remove the"
                + " other");
  }

  @Test
  void aTableThatCannotBeReadIsTheOnlyProblem() throws Exception {
    copy(TOWN, folder);
    Files.move(folder.resolve("tariffs.csv"), folder.resolve("tariffs.xlsx"));

    assertThat(JobFolder.read(folder).problems())
        .singleElement()
        .asString()
        .startsWith("tariffs.xlsx: cannot be read: is damaged, locked or no spreadsheet");
  }

  @Test
  void numbersDatesAndYesAreAsAPersonSeesThem() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "t", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("any name");
      List.of("a", "b", "c", "d").forEach(name -> sheet.value(0, "abcd".indexOf(name), name));
      sheet.value(1, 0, 0.1 + 0.2);
      sheet.value(1, 1, LocalDate.of(2026, 3, 31));
      sheet.style(1, 1).format("yyyy-MM-dd").set();
      sheet.value(1, 2, true);
      sheet.value(3, 0, 12_345_678);
    }
    List<String[]> rows = rows(FORMAT.toCsv(out.toByteArray()));
    assertThat(rows).hasSize(4);
    assertThat(rows.get(1)).containsExactly("0.3", "2026-03-31", "yes", "");
    assertThat(rows.get(2)).containsExactly("", "", "", "");
    assertThat(rows.get(3)).containsExactly("12345678", "", "", "");
  }

  /** Read by the JDK's own parser: ECMA-376 part 1, 18.3.1.4 (cells) in the first sheet. */
  @Test
  void theFileHasItsCellsWhereTheStandardPutsThem() throws Exception {
    byte[] sheet = FORMAT.fromCsv("unit_id,price\nU7,1490.5\n", "units");
    Path file = Files.write(folder.resolve("units.xlsx"), sheet);
    NodeList cells;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      cells =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(zip.getInputStream(zip.getEntry("xl/worksheets/sheet1.xml")))
              .getElementsByTagName("c");
    }
    assertThat(cells.getLength()).isEqualTo(4);
    assertThat(cells.item(3).getAttributes().getNamedItem("r").getNodeValue()).isEqualTo("B2");
    assertThat(cells.item(3).getTextContent()).isEqualTo("1490.5");
  }

  @Test
  void aFormulaWithoutAValueIsNamedByItsCell() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "t", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("t");
      sheet.value(0, 0, "a");
      sheet.value(1, 0, "#N/A");
    }
    assertThatThrownBy(() -> FORMAT.toCsv(out.toByteArray()))
        .isInstanceOf(TableFormatException.class)
        .satisfies(failure -> assertThat(((TableFormatException) failure).cell()).isEqualTo("A2"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "unit_id,price\n", "PK\u0003\u0004 nothing more"})
  void whatIsNoSpreadsheetIsSaidToBeNone(String content) {
    assertThatThrownBy(() -> FORMAT.toCsv(content.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("no spreadsheet");
  }

  @Test
  void whatUnpacksWithoutEndIsRefused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] zeros = new byte[1_000_000];
      for (int i = 0; i < 70; i++) {
        zip.write(zeros);
      }
    }
    assertThat(out.size()).isLessThan(1_000_000);
    assertThatThrownBy(() -> FORMAT.toCsv(out.toByteArray()))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("unpacks to more than 64 MB");
  }
}

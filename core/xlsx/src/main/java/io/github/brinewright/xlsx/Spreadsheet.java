package io.github.brinewright.xlsx;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvException;
import io.github.brinewright.job.TableFormat;
import io.github.brinewright.job.TableFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A table as a spreadsheet. The first sheet is read, its first row names the columns; formulas
 * count by the value that stands beside them, numbers by their first 15 digits, as spreadsheets
 * keep them.
 *
 * <pre>{@code
 * byte[] sheet = new Spreadsheet().fromCsv(Files.readString(Path.of("units.csv")), "units");
 * }</pre>
 */
public final class Spreadsheet implements TableFormat {
  /** A number that a spreadsheet keeps as it is written: at most 15 digits, no zero in front. */
  private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9]\\d{0,14})(?:\\.\\d+)?");

  private static final int MOST_DIGITS = 15;
  private static final String VERSION = "01.0000";

  /** Makes a format; {@link java.util.ServiceLoader} does. */
  public Spreadsheet() {}

  @Override
  public String extension() {
    return "xlsx";
  }

  @Override
  public String toCsv(byte[] content) throws IOException, TableFormatException {
    return new SheetReader(content).csv();
  }

  @Override
  public byte[] fromCsv(String csv, String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (CSVReader in =
            new CSVReaderBuilder(new StringReader(csv))
                .withCSVParser(new RFC4180ParserBuilder().build())
                .build();
        Workbook workbook = new Workbook(out, "Brinewright", VERSION)) {
      Worksheet sheet = workbook.newWorksheet(name);
      List<String[]> rows = in.readAll();
      for (int row = 0; row < rows.size(); row++) {
        for (int column = 0; column < rows.get(row).length; column++) {
          write(sheet, row, column, rows.get(row)[column]);
        }
      }
    } catch (CsvException malformed) {
      throw new IOException("is no CSV: " + malformed.getMessage(), malformed);
    }
    return out.toByteArray();
  }

  /** As a number where that says the same digits, or else as text. */
  private static void write(Worksheet sheet, int row, int column, String text) {
    if (isNumber(text)) {
      sheet.value(row, column, new BigDecimal(text));
    } else if (!text.isEmpty()) {
      sheet.value(row, column, text);
    }
  }

  private static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches()
        && new BigDecimal(text).precision() <= MOST_DIGITS
        && new BigDecimal(text).stripTrailingZeros().toPlainString().equals(text);
  }
}

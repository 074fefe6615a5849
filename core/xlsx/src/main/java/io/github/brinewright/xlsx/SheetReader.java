package io.github.brinewright.xlsx;

import com.opencsv.CSVWriter;
import io.github.brinewright.job.TableFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;

/** Reads the first sheet of a spreadsheet as CSV. */
final class SheetReader {
  /** What may come out of the file; a table of a job is far smaller. */
  private static final long MOST_BYTES = 64_000_000;

  private static final int MOST_ROWS = 200_000;
  private static final int MOST_COLUMNS = 1_000;

  private static final String NO_SPREADSHEET =
      "is damaged, locked or no spreadsheet of the kind .xlsx";

  /** Spreadsheets keep so many digits, and show no more. */
  private static final MathContext DIGITS = new MathContext(15);

  private static final Set<Integer> BUILT_IN_DATES = Set.of(14, 15, 16, 17, 22);

  private final byte[] content;

  SheetReader(byte[] content) {
    this.content = content;
  }

  String csv() throws IOException, TableFormatException {
    checkSize();
    try (ReadableWorkbook workbook =
            new ReadableWorkbook(
                new ByteArrayInputStream(content), new ReadingOptions(true, true));
        Stream<Row> rows = workbook.getFirstSheet().openStream()) {
      return csv(rows.limit(MOST_ROWS + 1L).toList());
    } catch (RuntimeException damaged) {
      throw new IOException(NO_SPREADSHEET, damaged);
    }
  }

  private String csv(List<Row> rows) throws IOException, TableFormatException {
    if (rows.size() > MOST_ROWS) {
      throw new IOException("has more than " + MOST_ROWS + " rows");
    }
    List<List<String>> lines = new ArrayList<>();
    for (Row row : rows) {
      while (lines.size() < row.getRowNum() - 1 && lines.size() <= MOST_ROWS) {
        lines.add(List.of());
      }
      lines.add(line(row));
    }
    int width = lines.isEmpty() ? 0 : lines.get(0).size();
    StringWriter text = new StringWriter();
    try (CSVWriter csv = new CSVWriter(text)) {
      lines.forEach(line -> csv.writeNext(padded(line, width), false));
    }
    return text.toString();
  }

  /** The cells of a row, without empty ones at its end. */
  private static List<String> line(Row row) throws IOException, TableFormatException {
    if (row.getCellCount() > MOST_COLUMNS) {
      throw new IOException("has more than " + MOST_COLUMNS + " columns");
    }
    List<String> line = new ArrayList<>();
    for (Cell cell : row) {
      line.add(cell == null ? "" : text(cell));
    }
    while (!line.isEmpty() && line.get(line.size() - 1).isEmpty()) {
      line.remove(line.size() - 1);
    }
    return line;
  }

  private static String[] padded(List<String> line, int width) {
    List<String> cells = new ArrayList<>(line);
    while (cells.size() < width) {
      cells.add("");
    }
    return cells.toArray(String[]::new);
  }

  private static String text(Cell cell) throws TableFormatException {
    String raw = cell.getRawValue();
    if (cell.getType() == CellType.ERROR || raw != null && raw.startsWith("#")) {
      throw new TableFormatException(cell.getAddress().toString(), String.valueOf(raw));
    }
    if (raw == null || cell.getType() == CellType.EMPTY) {
      return "";
    }
    return switch (cell.getType()) {
      case BOOLEAN -> "1".equals(raw) || "true".equalsIgnoreCase(raw) ? "yes" : "no";
      case STRING -> cell.asString();
      default -> isDate(cell) ? date(cell) : number(raw);
    };
  }

  /** A number as it was typed; what is no number stays as it stands. */
  private static String number(String raw) {
    try {
      BigDecimal number = new BigDecimal(raw).round(DIGITS).stripTrailingZeros();
      return number.toPlainString();
    } catch (NumberFormatException text) {
      return raw;
    }
  }

  private static boolean isDate(Cell cell) {
    String format = cell.getDataFormatString();
    Integer id = cell.getDataFormatId();
    boolean own =
        format != null && format.toLowerCase(Locale.ROOT).contains("yy") && !format.contains("\"");
    return own || id != null && BUILT_IN_DATES.contains(id);
  }

  private static String date(Cell cell) {
    var when = cell.asDate();
    return when.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? when.toLocalDate().toString()
        : when.toString();
  }

  /** Before anything is made of it, what is packed is measured. */
  private void checkSize() throws IOException {
    long bytes = 0;
    byte[] buffer = new byte[16_384];
    try (ZipFile zip = ZipFile.builder().setByteArray(content).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          for (int read = in.read(buffer); read > 0; read = in.read(buffer)) {
            bytes += read;
            if (bytes > MOST_BYTES) {
              throw new TooLargeException();
            }
          }
        }
      }
    } catch (TooLargeException large) {
      throw large;
    } catch (IOException damaged) {
      throw new IOException(NO_SPREADSHEET, damaged);
    }
    if (bytes == 0) {
      throw new IOException(NO_SPREADSHEET);
    }
  }

  private static final class TooLargeException extends IOException {
    private static final long serialVersionUID = 1L;

    TooLargeException() {
      super("unpacks to more than " + MOST_BYTES / 1_000_000 + " MB");
    }
  }
}

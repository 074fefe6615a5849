package io.github.brinewright.exchange;

import com.opencsv.CSVWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Rows of named values as CSV, for spreadsheets too. */
final class CsvRows {
  /** A sign that begins a formula, behind blanks and marks that a spreadsheet passes over. */
  private static final Pattern FORMULA = Pattern.compile("[\\p{C}\\p{Z}\\s]*[=+@\\-＝＋＠－]");

  private final CSVWriter csv;
  private boolean begun;

  /** Rows below the names of the first, to be added one by one. */
  CsvRows(Writer out) {
    csv = new CSVWriter(out);
  }

  void add(Map<String, @Nullable Object> row) {
    if (!begun) {
      csv.writeNext(row.keySet().toArray(String[]::new), false);
      begun = true;
    }
    csv.writeNext(cells(row), false);
    IOException failure = csv.getException();
    if (failure != null) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Rows below the names of the first. */
  static String csv(List<Map<String, @Nullable Object>> rows) {
    StringWriter text = new StringWriter();
    rows.forEach(new CsvRows(text)::add);
    return text.toString();
  }

  private static String[] cells(Map<String, @Nullable Object> row) {
    List<String> cells = new ArrayList<>();
    for (Object value : row.values()) {
      cells.add(cell(value));
    }
    return cells.toArray(String[]::new);
  }

  /** Text that a spreadsheet would take for a formula gets an apostrophe in front. */
  static String cell(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    String text = value instanceof List<?> codes ? joined(codes) : value.toString();
    return FORMULA.matcher(text).lookingAt() ? "'" + text : text;
  }

  private static String joined(List<?> codes) {
    return codes.stream().map(Object::toString).collect(Collectors.joining(" "));
  }
}

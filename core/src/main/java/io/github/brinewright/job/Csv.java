package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.CSVWriter;
import com.opencsv.RFC4180ParserBuilder;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;

/** Comma-separated text: quotes doubled, no field over 20 lines. */
final class Csv {
  private Csv() {}

  /** Rows of a text; what the text itself has to complain of comes through. */
  static CSVReader reader(Reader text) {
    return new CSVReaderBuilder(text)
        .withVerifyReader(false)
        .withCSVParser(new RFC4180ParserBuilder().build())
        .withMultilineLimit(20)
        .build();
  }

  /** Writes the columns that must be there and those that are filled in some row. */
  static String write(List<Column> columns, List<Map<String, String>> rows) {
    List<String> header =
        columns.stream()
            .filter(column -> column.needed() || filled(column.name(), rows))
            .map(Column::name)
            .toList();
    StringWriter out = new StringWriter();
    try (CSVWriter csv = new CSVWriter(out)) {
      csv.writeNext(header.toArray(String[]::new), false);
      for (Map<String, String> row : rows) {
        csv.writeNext(
            header.stream().map(name -> row.getOrDefault(name, "")).toArray(String[]::new), false);
      }
    } catch (IOException impossible) {
      throw new IllegalStateException("a text in memory cannot fail", impossible);
    }
    return out.toString();
  }

  private static boolean filled(String name, List<Map<String, String>> rows) {
    return rows.stream().anyMatch(row -> !row.getOrDefault(name, "").isBlank());
  }
}

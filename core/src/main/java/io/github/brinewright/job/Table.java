package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvValidationException;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads one CSV file into rows, noting whatever is wrong with its form. */
final class Table {
  private static final int LONGEST_FIELD = 2_000;

  private final TableShape shape;
  private final List<Problem> problems;
  private final List<Row> rows = new ArrayList<>();

  private Table(TableShape shape, List<Problem> problems) {
    this.shape = shape;
    this.problems = problems;
  }

  /** The rows of a file; after a problem with the file as a whole there are none. */
  static List<Row> read(JobFiles files, TableShape shape, List<Problem> problems) {
    Table table = new Table(shape, problems);
    TextFile.read(files, shape.file(), problems).ifPresent(table::parse);
    return table.rows;
  }

  private void parse(String text) {
    try (CSVReader reader = reader(text)) {
      String[] header = reader.readNext();
      if (header == null || !headerIsGood(header)) {
        if (header == null) {
          whole("is empty; its first row names the columns");
        }
        return;
      }
      long before = reader.getLinesRead();
      for (String[] cells = reader.readNext(); cells != null; cells = reader.readNext()) {
        addRow(header, cells, (int) before + 1);
        before = reader.getLinesRead();
      }
    } catch (IOException | CsvValidationException malformed) {
      whole("has a quote that is not closed, or a field over 20 lines: " + malformed.getMessage());
    }
  }

  /** Reads comma-separated text with quotes doubled, no field over 20 lines. */
  static CSVReader reader(String text) {
    return new CSVReaderBuilder(new StringReader(text))
        .withCSVParser(new RFC4180ParserBuilder().build())
        .withMultilineLimit(20)
        .build();
  }

  private void whole(String advice) {
    problems.add(TextFile.whole(shape.file(), advice));
  }

  private boolean headerIsGood(String[] header) {
    int before = problems.size();
    if (header.length == 1 && header[0].contains(";")) {
      whole("is separated by semicolons; save it with commas, and decimals with a point");
      return false;
    }
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < header.length; i++) {
      header[i] = header[i].strip();
      checkColumn(header[i], seen);
    }
    for (String name : shape.required()) {
      if (!seen.contains(name)) {
        problems.add(
            new Problem(shape.file(), 1, name, "", "is missing; add a column of this name"));
      }
    }
    return problems.size() == before;
  }

  private void checkColumn(String name, Set<String> seen) {
    if (!shape.known().contains(name)) {
      problems.add(
          new Problem(
              shape.file(),
              1,
              "",
              name,
              "is not a known column; " + Nearest.hint(name, shape.known())));
    } else if (!seen.add(name)) {
      problems.add(
          new Problem(shape.file(), 1, name, "", "stands twice in the header; remove one"));
    }
  }

  private void addRow(String[] header, String[] cells, int line) {
    if (Arrays.stream(cells).allMatch(String::isBlank)) {
      return;
    }
    Row row = new Row(shape.file(), line, problems);
    if (cells.length != header.length) {
      row.note(
          "",
          "",
          "has "
              + cells.length
              + " fields, but the header has "
              + header.length
              + "; put text with a comma between double quotes, and write decimals with a point");
      rows.add(row);
      return;
    }
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].length() > LONGEST_FIELD) {
        row.note(header[i], cells[i], "is longer than " + LONGEST_FIELD + " characters");
      } else {
        values.put(header[i], cells[i].strip());
      }
    }
    rows.add(row.with(values));
  }
}

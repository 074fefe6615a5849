package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.exceptions.CsvValidationException;
import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
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

  private final Columns<?, ?> columns;
  private final List<Problem> problems;
  private final List<Row> rows = new ArrayList<>();

  private Table(Columns<?, ?> columns, List<Problem> problems) {
    this.columns = columns;
    this.problems = problems;
  }

  /** The rows of a file; after a problem with the file as a whole there are none. */
  static List<Row> read(JobFiles files, Columns<?, ?> columns, List<Problem> problems) {
    Table table = new Table(columns, problems);
    TextFile.read(files, columns.file(), problems).ifPresent(table::parse);
    return table.rows;
  }

  private void parse(String text) {
    try (CSVReader reader = Csv.reader(text)) {
      String[] header = reader.readNext();
      if (header == null || !headerIsGood(header)) {
        if (header == null) {
          whole(ProblemCode.FILE_EMPTY);
        }
        return;
      }
      long before = reader.getLinesRead();
      for (String[] cells = reader.readNext(); cells != null; cells = reader.readNext()) {
        addRow(header, cells, (int) before + 1);
        before = reader.getLinesRead();
      }
    } catch (IOException | CsvValidationException malformed) {
      whole(ProblemCode.QUOTE_OPEN, new Argument.Text(String.valueOf(malformed.getMessage())));
    }
  }

  private void whole(ProblemCode code, Argument... arguments) {
    problems.add(Problem.whole(columns.file(), code, arguments));
  }

  private void header(String column, String value, ProblemCode code, Argument... arguments) {
    problems.add(
        new Problem(new Problem.Place(columns.file(), 1, column), value, code, List.of(arguments)));
  }

  private boolean headerIsGood(String[] header) {
    int before = problems.size();
    if (header.length == 1 && header[0].contains(";")) {
      whole(ProblemCode.SEMICOLONS);
      return false;
    }
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < header.length; i++) {
      header[i] = header[i].strip();
      checkColumn(header[i], seen);
    }
    columns.all().stream()
        .filter(column -> column.needed() && !seen.contains(column.name()))
        .forEach(column -> header(column.name(), "", ProblemCode.COLUMN_MISSING));
    return problems.size() == before;
  }

  private void checkColumn(String name, Set<String> seen) {
    List<String> known = columns.names();
    if (!known.contains(name)) {
      header("", name, ProblemCode.COLUMN_UNKNOWN, new Argument.Meant(name, known));
    } else if (!seen.add(name)) {
      header(name, "", ProblemCode.COLUMN_TWICE);
    }
  }

  private void addRow(String[] header, String[] cells, int line) {
    if (Arrays.stream(cells).allMatch(String::isBlank)) {
      return;
    }
    Row row = new Row(columns.file(), line, problems);
    if (cells.length != header.length) {
      row.note(
          "",
          "",
          ProblemCode.FIELD_COUNT,
          Argument.Number.of(cells.length),
          Argument.Number.of(header.length));
      rows.add(row);
      return;
    }
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].length() > LONGEST_FIELD) {
        row.note(
            header[i], cells[i], ProblemCode.FIELD_TOO_LONG, Argument.Number.of(LONGEST_FIELD));
      } else {
        values.put(header[i], cells[i].strip());
      }
    }
    rows.add(row.with(values));
  }
}

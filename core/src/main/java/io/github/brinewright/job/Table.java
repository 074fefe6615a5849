package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.exceptions.CsvMalformedLineException;
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
import java.util.function.Consumer;

/** Reads one CSV file row by row, noting whatever is wrong with its form. */
final class Table {
  private static final int LONGEST_FIELD = 2_000;
  private static final int MOST_COLUMNS = 1_000;

  private final Columns<?, ?> columns;
  private final Consumer<Problem> problems;
  private boolean headerIsGood = true;

  private Table(Columns<?, ?> columns, Consumer<Problem> problems) {
    this.columns = columns;
    this.problems = problems;
  }

  /** The rows of a file; after a problem with the file as a whole there are none. */
  static List<Row> read(JobFiles files, Columns<?, ?> columns, List<Problem> problems) {
    List<Row> rows = new ArrayList<>();
    return each(files, columns, problems::add, rows::add) ? rows : List.of();
  }

  /** Passes on each row as it is read; false where the file turned out to be no text. */
  static boolean each(
      JobFiles files, Columns<?, ?> columns, Consumer<Problem> problems, Consumer<Row> rows) {
    Table table = new Table(columns, problems);
    try (CSVReader reader = Csv.reader(TextFile.open(files, columns.file()))) {
      table.parse(reader, rows);
      return true;
    } catch (CsvMalformedLineException | CsvValidationException malformed) {
      table.whole(ProblemCode.QUOTE_OPEN, new Argument.Text(TextFile.said(malformed)));
      return true;
    } catch (IOException unreadable) {
      problems.accept(TextFile.problem(columns.file(), unreadable));
      return false;
    }
  }

  private void parse(CSVReader reader, Consumer<Row> rows)
      throws IOException, CsvValidationException {
    String[] header = reader.readNext();
    if (header == null) {
      whole(ProblemCode.FILE_EMPTY);
    } else if (headerIsGood(header)) {
      long before = reader.getLinesRead();
      for (String[] cells = reader.readNext(); cells != null; cells = reader.readNext()) {
        addRow(header, cells, (int) before + 1, rows);
        before = reader.getLinesRead();
      }
    }
  }

  private void whole(ProblemCode code, Argument... arguments) {
    problems.accept(Problem.whole(columns.file(), code, arguments));
  }

  private void header(String column, String value, ProblemCode code, Argument... arguments) {
    headerIsGood = false;
    problems.accept(
        new Problem(new Problem.Place(columns.file(), 1, column), value, code, List.of(arguments)));
  }

  private boolean headerIsGood(String[] header) {
    if (header.length == 1 && header[0].contains(";")) {
      whole(ProblemCode.SEMICOLONS);
      return false;
    }
    if (header.length > MOST_COLUMNS) {
      whole(
          ProblemCode.TOO_MANY_COLUMNS,
          Argument.Number.of(header.length),
          Argument.Number.of(MOST_COLUMNS));
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
    return headerIsGood;
  }

  private void checkColumn(String name, Set<String> seen) {
    List<String> known = columns.names();
    if (!known.contains(name)) {
      header("", name, ProblemCode.COLUMN_UNKNOWN, new Argument.Meant(name, known));
    } else if (!seen.add(name)) {
      header(name, "", ProblemCode.COLUMN_TWICE);
    }
  }

  private void addRow(String[] header, String[] cells, int line, Consumer<Row> rows) {
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
      rows.accept(row);
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
    rows.accept(row.with(values));
  }
}

package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;

/** The files of a job, tables in other forms read as the CSV files that they stand for. */
final class TablesAsCsv {
  private static final String CSV = ".csv";

  /** The ending of spreadsheets by ECMA-376. */
  private static final String SPREADSHEET = "xlsx";

  private final Map<String, String> named = new HashMap<>();
  private JobFiles files;

  private TablesAsCsv(JobFiles files) {
    this.files = files;
  }

  /** Looks through the files, noting what is wrong with tables in other forms. */
  static TablesAsCsv of(JobFiles files, List<Problem> problems) {
    TablesAsCsv tables = new TablesAsCsv(files);
    for (String name : JobFiles.NAMES) {
      if (name.endsWith(CSV)) {
        tables.look(name, problems);
      }
    }
    return tables;
  }

  private void look(String name, List<Problem> problems) {
    String other = name.substring(0, name.length() - CSV.length()) + "." + SPREADSHEET;
    if (!files.has(other)) {
      return;
    }
    Optional<TableFormat> format = format();
    named.put(name, other);
    if (files.has(name)) {
      problems.add(Problem.whole(other, ProblemCode.TABLE_TWICE, new Argument.Text(name)));
    } else if (format.isEmpty()) {
      problems.add(Problem.whole(other, ProblemCode.NO_TABLE_FORMAT));
    } else {
      convert(name, other, format.get(), problems);
    }
  }

  private static Optional<TableFormat> format() {
    return ServiceLoader.load(TableFormat.class, TableFormat.class.getClassLoader()).stream()
        .map(Provider::get)
        .filter(each -> each.extension().equals(SPREADSHEET))
        .findFirst();
  }

  private void convert(String name, String other, TableFormat format, List<Problem> problems) {
    try {
      TextFile.requireSize(files, other, TextFile.LARGEST_MB);
      files = files.with(name, format.toCsv(files.read(other)));
    } catch (TableFormatException cell) {
      Problem.Place place = new Problem.Place(other, 0, cell.cell());
      problems.add(
          new Problem(place, cell.getMessage(), ProblemCode.CELL_WITHOUT_VALUE, List.of()));
    } catch (IOException unreadable) {
      problems.add(TextFile.problem(other, unreadable));
    }
  }

  /** The name of the file that was really read. */
  String really(String name) {
    return named.getOrDefault(name, name);
  }

  /** The files as they are read. */
  JobFiles files() {
    return files;
  }
}

package io.github.brinewright.area;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Makes a home of the cells of a row, by the reader of a job folder. */
final class HomeReader {
  /** The column that a job folder does not have. */
  static final String DISTRICT = "district";

  private static final String ID = "site_id";
  private static final ProblemWords WORDS = new ProblemWords(Locale.US);

  private HomeReader() {}

  /** A home with the job that it was read into. */
  record Read(Job job, QuotedHome home) {}

  /** Thrown for a row that cannot be read. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    Refused(String message) {
      super(message);
    }
  }

  /** The home of a row; cells of columns that a job folder does not have are left out. */
  static Read read(Map<String, String> cells) throws Refused {
    Map<String, String> known = new LinkedHashMap<>(cells);
    known.remove(DISTRICT);
    JobReading reading = JobFolder.read(JobFiles.of(Map.of(SiteCells.FILE, SiteCells.csv(known))));
    if (!reading.problems().isEmpty()) {
      throw new Refused(told(cells, reading.problems()));
    }
    Job job = reading.job().orElseThrow();
    return new Read(job, job.homes().get(0));
  }

  /** The row is named by its id: a table in parts has no line numbers. */
  private static String told(Map<String, String> cells, List<Problem> problems) {
    String id = cells.getOrDefault(ID, "");
    String row = "home " + (id.isEmpty() ? "without an id" : id);
    return problems.stream()
        .map(problem -> row + ": " + WORDS.say(problem))
        .collect(Collectors.joining("; "));
  }

  /**
   * Looks at the header of a table.
   *
   * @throws IllegalArgumentException naming every column that is missing or not known
   */
  static void check(String place, List<String> columns) {
    Set<String> known = new HashSet<>(Set.of(DISTRICT));
    SiteColumns.all().forEach(column -> known.add(column.name()));
    Set<String> wrong = new TreeSet<>(columns);
    wrong.removeAll(known);
    Set<String> missing = new TreeSet<>(Set.of(DISTRICT, ID, "people"));
    columns.forEach(missing::remove);
    if (!wrong.isEmpty() || !missing.isEmpty()) {
      throw new IllegalArgumentException(
          place
              + ": columns not known "
              + wrong
              + ", columns missing "
              + missing
              + "; a table has the columns of sites.csv, and "
              + DISTRICT);
    }
  }
}

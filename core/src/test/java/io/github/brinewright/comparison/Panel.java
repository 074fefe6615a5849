package io.github.brinewright.comparison;

import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.exceptions.CsvException;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Invented homes with what an experienced engineer would accept, argued in a line each. */
final class Panel {
  private static final Path FOLDER = Path.of("src/test/resources/panel");
  private static final Path DEMO = Path.of("../samples/job");

  private Panel() {}

  /**
   * What is acceptable for one home.
   *
   * @param siteId of the home
   * @param verdict in lower case
   * @param reasons codes, sorted
   * @param resins cubic feet of one bed; none where no softener may be recommended
   * @param lowest dosage in lb/ft3; 0 where none
   * @param highest dosage in lb/ft3; 0 where none
   * @param controls in lower case
   * @param why the argument
   */
  record Expected(
      String siteId,
      String verdict,
      List<String> reasons,
      List<Double> resins,
      double lowest,
      double highest,
      List<String> controls,
      String why) {
    boolean none() {
      return resins.isEmpty();
    }

    static Expected of(Map<String, String> row) {
      boolean none = row.get("resin_ft3").equals("none");
      return new Expected(
          row.get("site_id"),
          row.get("verdict"),
          words(row.get("reasons")),
          none ? List.of() : words(row.get("resin_ft3")).stream().map(Double::valueOf).toList(),
          none ? 0 : Double.parseDouble(row.get("lowest_dosage_lb_per_ft3")),
          none ? 0 : Double.parseDouble(row.get("highest_dosage_lb_per_ft3")),
          none ? List.of() : words(row.get("controls")),
          row.get("why"));
    }

    private static List<String> words(String cell) {
      return cell.isBlank() ? List.of() : List.of(cell.trim().split(" +"));
    }

    @Override
    public String toString() {
      return siteId + ": " + why;
    }
  }

  /** The homes, read as a job with the demo's dealer, tariffs and resins. */
  static Job job() {
    Map<String, String> files = new HashMap<>();
    for (String name : List.of("dealer.properties", "resins.csv", "tariffs.csv")) {
      files.put(name, text(DEMO.resolve(name)));
    }
    files.put("units.csv", text(FOLDER.resolve("units.csv")));
    files.put("sites.csv", text(FOLDER.resolve("homes.csv")));
    JobReading reading = JobFolder.read(JobFiles.of(files));
    return reading
        .job()
        .orElseThrow(() -> new AssertionError("the panel cannot be read: " + reading.problems()));
  }

  static List<Expected> expected() {
    try (Reader text = Files.newBufferedReader(FOLDER.resolve("expected.csv"));
        CSVReaderHeaderAware rows = new CSVReaderHeaderAware(text)) {
      List<Expected> all = new ArrayList<>();
      for (Map<String, String> row = rows.readMap(); row != null; row = rows.readMap()) {
        all.add(Expected.of(row));
      }
      return all;
    } catch (IOException | CsvException e) {
      throw new AssertionError(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}

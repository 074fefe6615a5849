package io.github.brinewright.panel;

import com.opencsv.CSVReaderHeaderAware;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The panel of homes as a job, and what an experienced engineer would say of each. */
public final class Panel {
  private static final Path FOLDER = Path.of("src/test/resources/panel");
  private static final Path DEMO = Path.of("../samples/job");

  private Panel() {}

  /** The homes and units of the panel with the dealer, tariffs and resins of the demo job. */
  public static Job job() throws IOException {
    JobReading reading =
        JobFolder.read(
            JobFiles.in(DEMO)
                .with("sites.csv", Files.readString(FOLDER.resolve("homes.csv")))
                .with("items.csv", "item_id,kind\n")
                .with("units.csv", Files.readString(FOLDER.resolve("units.csv"))));
    return reading.job().orElseThrow(() -> new AssertionError(reading.problems().toString()));
  }

  /** Rows of expected.csv by column. */
  public static List<Map<String, String>> expected() throws Exception {
    List<Map<String, String>> rows = new ArrayList<>();
    String text = Files.readString(FOLDER.resolve("expected.csv"));
    try (CSVReaderHeaderAware csv = new CSVReaderHeaderAware(new StringReader(text))) {
      for (Map<String, String> row = csv.readMap(); row != null; row = csv.readMap()) {
        rows.add(row);
      }
    }
    return rows;
  }
}

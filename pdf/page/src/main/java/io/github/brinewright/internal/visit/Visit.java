package io.github.brinewright.internal.visit;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The answers on a page as a row of sites.csv, and what the reader of job folders says of it.
 *
 * @param folder that it belongs to
 * @param siteId of the row in the folder that is changed; empty for a new one
 * @param cells of the row as it stands on the page
 * @param reading of the folder with this row alone
 */
public record Visit(
    Folder folder, Optional<String> siteId, Map<String, String> cells, JobReading reading) {

  /**
   * Reads what stands on a page.
   *
   * @param language that the fields were filled in
   */
  public static Visit of(Folder folder, Asked asked, Locale language) {
    Optional<String> siteId = folder.named(asked.home());
    Map<String, String> fields = asked.fields();
    Map<String, String> stored = folder.stored(siteId);
    Map<String, String> cells =
        fields.isEmpty() ? stored : new Answers(fields, language).in(stored);
    return new Visit(folder, siteId, cells, JobFolder.read(OneHome.of(folder.files(), cells)));
  }

  /** The job with this home; empty where a file that all homes share has errors. */
  public Optional<Job> job() {
    return reading.job();
  }

  /** The home; empty where its row has errors. */
  public Optional<QuotedHome> home() {
    return job().flatMap(job -> job.homes().stream().findFirst());
  }

  /** What is wrong with the row. */
  public List<Problem> problems() {
    return reading.problems().stream()
        .filter(problem -> problem.file().equals(SiteCells.FILE))
        .toList();
  }
}

package consumers;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import java.nio.file.Path;
import java.util.Map;

/** A job that never was a folder, with a mistake in it. */
final class JobInMemory implements Consumer {
  private static final String HOMES =
      """
      site_id,customer,hardness_gpg,people,bathrooms
      A1,Invented family,18,3,2
      A2,Another invented family,twenty,4,2
      """;

  static Job job() {
    return reading().job().orElseThrow();
  }

  private static JobReading reading() {
    return JobFolder.read(JobFiles.of(Map.of("sites.csv", HOMES)));
  }

  @Override
  public String run(Path out) {
    JobReading reading = reading();
    Consumer.require(reading.problems().size() == 1, "one cell is wrong");
    Consumer.require(job().visits().size() == 1, "the other home is read");
    return reading.problems().get(0).toString();
  }
}

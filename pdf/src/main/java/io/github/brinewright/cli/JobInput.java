package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Visit;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads a job folder for a command and says what is wrong with it. */
final class JobInput {
  private final JobReading reading;

  private JobInput(JobReading reading) {
    this.reading = reading;
  }

  static JobInput read(Path folder, PrintWriter err) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(folder + " is not a folder; name the folder that holds sites.csv");
    }
    JobReading reading = JobFolder.read(folder);
    reading.problems().forEach(err::println);
    reading.job().ifPresent(job -> job.notes().forEach(note -> err.println("note: " + note)));
    return new JobInput(reading);
  }

  /** Whether every file and every home was free of errors. */
  boolean clean() {
    return reading.problems().isEmpty();
  }

  int refused() {
    return reading.homesRefused();
  }

  int problems() {
    return reading.problems().size();
  }

  boolean usable() {
    return reading.job().isPresent();
  }

  Job job() {
    return reading.job().orElseThrow();
  }

  /** The homes asked for: one by its id, or all. */
  List<Visit> visits(@Nullable String siteId) {
    if (siteId == null) {
      return job().visits();
    }
    return List.of(
        job()
            .visit(siteId)
            .orElseThrow(
                () ->
                    new UsageException(
                        "there is no usable home \"" + siteId + "\"; homes are: " + ids())));
  }

  private String ids() {
    return job().visits().stream()
        .map(visit -> visit.site().id())
        .collect(Collectors.joining(", "));
  }
}

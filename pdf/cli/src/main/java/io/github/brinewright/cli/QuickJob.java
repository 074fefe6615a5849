package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A job made of options alone: they are read as the files of a job would be. */
final class QuickJob {
  private QuickJob() {}

  /**
   * The job.
   *
   * @param files text of each file, by its name
   * @param names of the options, by column
   * @throws UsageException with all that is wrong, each named by its option
   */
  static Job read(Map<String, String> files, Map<String, String> names) {
    return job(JobFolder.read(JobFiles.of(files)), names);
  }

  /** What the homes of such a job share. */
  static Job withoutHomes(Map<String, String> files, Map<String, String> names) {
    return job(JobFolder.readWithoutHomes(JobFiles.of(files)), names);
  }

  private static Job job(JobReading reading, Map<String, String> names) {
    if (!reading.problems().isEmpty()) {
      throw new UsageException(
          reading.problems().stream()
              .map(problem -> describe(problem, names))
              .collect(Collectors.joining(System.lineSeparator())));
    }
    return reading.job().orElseThrow();
  }

  private static String describe(Problem problem, Map<String, String> names) {
    return new ProblemWords(Locale.ENGLISH).sayOfOption(problem, names);
  }
}

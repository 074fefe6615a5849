package io.github.brinewright.job;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a job folder.
 *
 * @param job the job with every home that is free of errors; empty when a file that all homes share
 *     has errors
 * @param problems everything that is wrong, file by file
 * @param homesRefused rows of sites.csv that have errors
 */
public record JobReading(Optional<Job> job, List<Problem> problems, int homesRefused) {
  /** Keeps its own copy of {@code problems}. */
  public JobReading {
    problems = List.copyOf(problems);
  }
}

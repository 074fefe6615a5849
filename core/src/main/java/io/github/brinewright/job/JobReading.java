package io.github.brinewright.job;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What came of reading a job. Immutable. */
public final class JobReading {
  private final @Nullable Job job;
  private final List<Problem> problems;
  private final List<Note> notes;
  private final int homesRefused;

  JobReading(@Nullable Job job, List<Problem> problems, List<Note> notes, int homesRefused) {
    this.job = job;
    this.problems = List.copyOf(problems);
    this.notes = List.copyOf(notes);
    this.homesRefused = homesRefused;
  }

  /**
   * {@return the job with every home that is free of errors; empty when a file that all homes share
   * has errors}
   */
  public Optional<Job> job() {
    return Optional.ofNullable(job);
  }

  /** {@return everything that is wrong, file by file} */
  public List<Problem> problems() {
    return problems;
  }

  /** {@return what was taken from built-in defaults} */
  public List<Note> notes() {
    return notes;
  }

  /** {@return how many rows of sites.csv have errors} */
  public int homesRefused() {
    return homesRefused;
  }

  @Override
  public String toString() {
    return "a job with " + problems.size() + " problems, homes refused " + homesRefused;
  }
}

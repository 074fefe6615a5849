package io.github.brinewright.proposal;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.job.QuotedHome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;

/** Makes of a job what its documents carry. */
final class Carrying {
  private Carrying() {}

  /** The job with one home and nothing of the others. */
  static CarriedJob home(Job job, QuotedHome home, LocalDate date) {
    try {
      return new CarriedJob(home.site().id(), date, JobExcerpt.of(job.files(), job.dealer(), home));
    } catch (IOException unreadable) {
      throw unreadable(unreadable);
    }
  }

  /** The job without its homes. */
  static CarriedJob noHome(Job job, LocalDate date) {
    try {
      return new CarriedJob("", date, JobExcerpt.withoutHomes(job.files(), job.dealer()));
    } catch (IOException unreadable) {
      throw unreadable(unreadable);
    }
  }

  private static UncheckedIOException unreadable(IOException failure) {
    return new UncheckedIOException(
        "the job cannot be read again: " + failure.getMessage(), failure);
  }
}

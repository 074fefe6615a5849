package io.github.brinewright.samples;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/** Reads a job folder and writes the proposal of its first home. */
public final class ProposalFromCode {
  private ProposalFromCode() {}

  /**
   * @param args the job folder and the file to write
   */
  public static void main(String[] args) throws IOException {
    JobReading reading = JobFolder.read(Path.of(args[0]));
    reading.problems().forEach(System.err::println);
    Job job = reading.job().orElseThrow();
    QuotedHome home = job.homes().get(0);
    Comparison comparison = job.compare(home);
    byte[] pdf = new Proposal(comparison, job.dealer(), LocalDate.now()).toPdf();
    Files.write(Path.of(args[1]), pdf);
  }
}

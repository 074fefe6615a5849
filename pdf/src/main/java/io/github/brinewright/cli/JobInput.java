package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.PdfReader;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Visit;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads a job folder for a command and says what is wrong with it. */
final class JobInput {
  private final JobReading reading;
  private final JobFiles files;
  private final Optional<CarriedJob> reopened;

  private JobInput(JobReading reading, JobFiles files, Optional<CarriedJob> reopened) {
    this.reading = reading;
    this.files = files;
    this.reopened = reopened;
  }

  /** Reads a job folder, or the job that a proposal carries. */
  static JobInput read(Path path, PrintWriter err) {
    Optional<CarriedJob> reopened = reopened(path);
    if (reopened.isEmpty() && !Files.isDirectory(path)) {
      throw new UsageException(
          path
              + " is neither a folder that holds sites.csv nor a proposal written by this program");
    }
    JobFiles files =
        reopened.map(job -> JobFiles.of(job.files())).orElseGet(() -> JobFiles.in(path));
    JobReading reading = JobFolder.read(files);
    reading.problems().forEach(err::println);
    reading.job().ifPresent(job -> job.notes().forEach(note -> err.println("note: " + note)));
    reading.job().flatMap(job -> colourNote(job.dealer().accent())).ifPresent(err::println);
    return new JobInput(reading, files, reopened);
  }

  private static Optional<String> colourNote(String accent) {
    Ink ink = Ink.of(accent);
    return ink.equals(ink.readable())
        ? Optional.empty()
        : Optional.of(
            "note: accent "
                + accent
                + " is too light to read on white (contrast below 4.5); it is darkened in documents");
  }

  private static Optional<CarriedJob> reopened(Path path) {
    if (!Files.isRegularFile(path)) {
      return Optional.empty();
    }
    try {
      Optional<byte[]> json = PdfReader.attachment(Files.readAllBytes(path), CarriedJob.FILE);
      return json.isPresent() ? Optional.of(CarriedJob.fromJson(json.get())) : Optional.empty();
    } catch (IOException unreadable) {
      throw new UsageException(path + " cannot be opened: " + unreadable.getMessage());
    }
  }

  /** The home that a reopened proposal is about. */
  @Nullable String siteOfProposal() {
    return reopened.map(CarriedJob::site).orElse(null);
  }

  /** What a comparison changes against the proposal that was reopened here. */
  Revision revisedBy(Comparison now) {
    CarriedJob earlier =
        reopened.orElseThrow(
            () -> new UsageException("--since takes a proposal that carries its data"));
    String site = now.home().site().id();
    if (!usable() || !earlier.site().equals(site)) {
      throw new UsageException(
          "the earlier proposal is about home \"" + earlier.site() + "\", not \"" + site + "\"");
    }
    Comparison before = job().compare(visits(site).get(0));
    return Revision.between(before, earlier.date(), now);
  }

  /** The job with one home, for a proposal to carry. */
  CarriedJob carried(Visit visit, LocalDate date) {
    try {
      return new CarriedJob(visit.site().id(), date, JobExcerpt.of(files, visit.site().id()));
    } catch (IOException unreadable) {
      throw new UsageException("the job cannot be read again: " + unreadable.getMessage());
    }
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

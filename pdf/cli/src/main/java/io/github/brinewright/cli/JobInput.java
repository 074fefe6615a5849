package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads a job folder for a command and says what is wrong with it. */
final class JobInput {
  static final String NO_JOB =
      "is neither a folder that holds sites.csv"
          + " nor a proposal or a form written by this program with its data";

  private final JobReading reading;
  private final JobFiles files;
  private final Optional<PdfInput> pdf;

  private JobInput(JobReading reading, JobFiles files, Optional<PdfInput> pdf) {
    this.reading = reading;
    this.files = files;
    this.pdf = pdf;
  }

  /** Reads a job folder, or the job that came with a proposal or a filled form. */
  static JobInput read(Path path, PrintWriter err) {
    if (Files.isDirectory(path)) {
      return read(JobFiles.in(path), Optional.empty(), err);
    }
    if (!Files.isRegularFile(path)) {
      throw new UsageException(path + " " + NO_JOB);
    }
    PdfInput pdf = PdfInput.read(path);
    pdf.note().ifPresent(err::println);
    return read(pdf.files(), Optional.of(pdf), err);
  }

  private static JobInput read(JobFiles files, Optional<PdfInput> pdf, PrintWriter err) {
    return new JobInput(JobFolder.read(files), files, pdf).reported(err);
  }

  /** Reads the home of a proposal or a filled form, and all else from a job folder. */
  static JobInput read(Path path, Path prices, PrintWriter err) {
    if (!Files.isRegularFile(path) || !Files.isDirectory(prices)) {
      throw new UsageException(
          "--prices takes a folder, with a proposal or a form in place of JOBFOLDER");
    }
    PdfInput pdf = PdfInput.read(path);
    return read(JobFiles.in(prices).with(SiteCells.FILE, pdf.sites()), Optional.of(pdf), err);
  }

  /** Reads what the homes of a job folder share. */
  static JobInput readWithoutHomes(Path folder, PrintWriter err) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(folder + " is not a folder");
    }
    JobFiles files = JobFiles.in(folder);
    return new JobInput(JobFolder.readWithoutHomes(files), files, Optional.empty()).reported(err);
  }

  /** Says what is wrong and what was assumed. */
  private JobInput reported(PrintWriter err) {
    reading.problems().stream()
        .map(problem -> pdf.map(from -> from.describe(problem)).orElse(problem.toString()))
        .forEach(err::println);
    ProblemWords words = new ProblemWords(Locale.ENGLISH);
    reading.notes().forEach(note -> err.println("note: " + words.say(note)));
    reading.job().flatMap(job -> colourNote(job.dealer().accent())).ifPresent(err::println);
    return this;
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

  /** The home asked for, or else the one that a PDF is about; null for all of a folder. */
  @Nullable String siteOr(@Nullable String asked) {
    return asked == null ? pdf.map(PdfInput::site).orElse(null) : asked;
  }

  /** What a comparison changes against the proposal that was reopened here. */
  Revision revisedBy(Comparison now) {
    PdfInput earlier =
        pdf.orElseThrow(() -> new UsageException("--since takes a proposal that carries its data"));
    String site = now.home().site().id();
    if (!usable() || !earlier.site().equals(site)) {
      throw new UsageException(
          "the earlier proposal is about home \"" + earlier.site() + "\", not \"" + site + "\"");
    }
    Comparison before = job().compare(homes(site).get(0));
    return Revision.between(before, earlier.date(), now);
  }

  /** The job with one home, for a proposal to carry, or without any, for a form. */
  CarriedJob carried(Optional<String> site, LocalDate date) {
    Dealer dealer = job().dealer();
    try {
      Map<String, String> texts =
          site.isPresent()
              ? JobExcerpt.of(files, dealer, site.get())
              : JobExcerpt.withoutHomes(files, dealer);
      return new CarriedJob(site, date, texts);
    } catch (IOException unreadable) {
      throw new UsageException("the job cannot be read again: " + unreadable.getMessage());
    }
  }

  /** The cells of a home as they stand in sites.csv, free of errors or not. */
  Map<String, String> cells(String siteId) {
    try {
      return SiteCells.of(files, siteId)
          .orElseThrow(
              () -> new UsageException("there is no home \"" + siteId + "\" in " + files.place()));
    } catch (IOException unreadable) {
      throw new UsageException(unreadable.getMessage());
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

  /** Whether there is a home to work on. */
  boolean hasHomes() {
    return reading.job().filter(job -> !job.homes().isEmpty()).isPresent();
  }

  Job job() {
    return reading.job().orElseThrow();
  }

  /** The homes asked for: one by its id, or all. */
  List<QuotedHome> homes(@Nullable String siteId) {
    if (siteId == null) {
      return job().homes();
    }
    return List.of(
        job()
            .home(siteId)
            .orElseThrow(
                () ->
                    new UsageException(
                        "there is no usable home \"" + siteId + "\"; homes are: " + ids())));
  }

  private String ids() {
    return job().homes().stream().map(home -> home.site().id()).collect(Collectors.joining(", "));
  }
}

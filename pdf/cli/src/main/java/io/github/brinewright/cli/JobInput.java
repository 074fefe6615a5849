package io.github.brinewright.cli;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads a job folder for a command and says what is wrong with it. */
final class JobInput {
  static final String NO_JOB =
      "is neither a folder that holds sites.csv"
          + " nor a proposal or a form written by this program with its data";

  private static final int MOST_NAMED = 20;

  private final JobReading reading;
  private final @Nullable PdfInput pdf;

  private JobInput(JobReading reading, @Nullable PdfInput pdf) {
    this.reading = reading;
    this.pdf = pdf;
  }

  /** Reads a job folder, or the job that came with a proposal or a filled form. */
  static JobInput read(Path path, PrintWriter err) {
    if (Files.isDirectory(path)) {
      return new JobInput(JobFolder.read(path), null).reported(err);
    }
    if (!Files.exists(path)) {
      throw new UsageException("there is no file or folder " + path);
    }
    if (!Files.isRegularFile(path)) {
      throw new UsageException(path + " " + NO_JOB);
    }
    PdfInput pdf = PdfInput.read(path);
    if (pdf.isForm()) {
      err.println(
          "note: prices are those that the form brought, of "
              + pdf.content().date()
              + "; take today's with --prices JOBFOLDER");
    }
    return of(pdf, err);
  }

  private static JobInput of(PdfInput pdf, PrintWriter err) {
    return new JobInput(pdf.content().reading(), pdf).reported(err);
  }

  /** Reads the home of a proposal or a filled form, and all else from a job folder. */
  static JobInput read(Path path, Path prices, PrintWriter err) {
    if (!Files.isRegularFile(path) || !Files.isDirectory(prices)) {
      throw new UsageException(
          "--prices takes a folder, with a proposal or a form in place of JOBFOLDER");
    }
    return of(PdfInput.read(path).at(prices), err);
  }

  /** Reads what the homes of a job folder share. */
  static JobInput readWithoutHomes(Path folder, PrintWriter err) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(folder + " is not a folder");
    }
    return new JobInput(JobFolder.readWithoutHomes(JobFiles.in(folder)), null).reported(err);
  }

  /** Says what is wrong and what was assumed. */
  private JobInput reported(PrintWriter err) {
    new ProblemList(reading.problems(), this::describe).lines().forEach(err::println);
    ProblemWords words = new ProblemWords(Locale.ENGLISH);
    reading.notes().forEach(note -> err.println("note: " + words.say(note)));
    if (usable() && Proposals.of(job()).darkensAccent()) {
      err.println(
          "note: accent "
              + job().dealer().accent()
              + " is too light to read on white (contrast below 4.5);"
              + " it is darkened in documents");
    }
    return this;
  }

  private String describe(Problem problem) {
    return pdf == null ? problem.toString() : pdf.describe(problem);
  }

  /** The home asked for, or else the one that a PDF is about; null for all of a folder. */
  @Nullable String siteOr(@Nullable String asked) {
    return asked == null && pdf != null ? pdf.content().homeId() : asked;
  }

  /**
   * The earlier proposal that a revised one goes by.
   *
   * @param home the one to propose for
   */
  static Reopened earlier(Path path, QuotedHome home, PrintWriter err) {
    if (!Files.isRegularFile(path)) {
      throw new UsageException("--since takes a proposal that carries its data");
    }
    PdfInput pdf = PdfInput.read(path);
    JobInput input = of(pdf, err);
    String asked = home.site().id();
    if (!pdf.content().homeId().equals(asked)) {
      throw new UsageException(
          "the earlier proposal is about home \""
              + pdf.content().homeId()
              + "\", not \""
              + asked
              + "\"");
    }
    if (!input.hasHomes()) {
      throw new UsageException(path + " carries data with the errors above");
    }
    return pdf.content();
  }

  /** The cells of a home of a folder as they stand in sites.csv, free of errors or not. */
  static Map<String, String> cells(Path folder, String siteId) {
    try {
      return SiteCells.of(JobFiles.in(folder), siteId)
          .orElseThrow(
              () -> new UsageException("there is no home \"" + siteId + "\" in " + folder));
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

  /** The rows that no home came of, each with the first that is wrong with it. */
  List<HomeOutcome> refusals() {
    ProblemWords words = new ProblemWords(job().dealer().locale());
    Map<Integer, Problem> first = new TreeMap<>();
    reading.problems().stream()
        .filter(problem -> problem.file().equals(SiteCells.FILE) && problem.row() > 0)
        .forEach(problem -> first.putIfAbsent(problem.row(), problem));
    return first.values().stream()
        .map(each -> HomeOutcome.failed(SiteCells.FILE + ":" + each.row(), words.say(each)))
        .toList();
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
    return job().homes().stream()
        .map(home -> home.site().id())
        .limit(MOST_NAMED)
        .collect(
            Collectors.joining(", ", "", job().homes().size() > MOST_NAMED ? " and others" : ""));
  }
}

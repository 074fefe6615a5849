package io.github.brinewright.cli;

import io.github.brinewright.job.HomeRow;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.Note;
import io.github.brinewright.job.OpenJob;
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
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A job folder, or a job that came with a PDF, for a command: its homes come one by one, and what
 * is wrong with it is said as it is found.
 */
final class JobInput {
  static final String NO_JOB =
      "is neither a folder that holds sites.csv"
          + " nor a proposal or a form written by this program with its data";

  private final OpenJob open;
  private final @Nullable PdfInput pdf;
  private final PrintWriter err;
  private final ProblemList problems;
  private OpenJob.Count count = new OpenJob.Count(0, 0);

  private JobInput(OpenJob open, @Nullable PdfInput pdf, PrintWriter err) {
    this.open = open;
    this.pdf = pdf;
    this.err = err;
    problems = new ProblemList(this::describe, err);
    open.problems().forEach(problems::add);
  }

  /** Opens a job folder, or the job that came with a proposal or a filled form. */
  static JobInput open(Path path, PrintWriter err) {
    if (Files.isDirectory(path)) {
      return new JobInput(JobFolder.open(JobFiles.in(path)), null, err);
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
    return new JobInput(JobFolder.open(pdf.content().files()), pdf, err);
  }

  /** Opens the home of a proposal or a filled form, and all else of a job folder. */
  static JobInput open(Path path, Path prices, PrintWriter err) {
    if (!Files.isRegularFile(path) || !Files.isDirectory(prices)) {
      throw new UsageException(
          "--prices takes a folder, with a proposal or a form in place of JOBFOLDER");
    }
    return of(PdfInput.read(path).at(prices), err);
  }

  /** Reads what the homes of a job folder share; empty after saying what is wrong. */
  static Optional<Job> readWithoutHomes(Path folder, PrintWriter err) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(folder + " is not a folder");
    }
    var reading = JobFolder.readWithoutHomes(JobFiles.in(folder));
    ProblemList.say(reading.problems(), err);
    note(reading.notes(), reading.job(), err);
    return reading.job();
  }

  private static void note(List<Note> notes, Optional<Job> job, PrintWriter err) {
    ProblemWords words = new ProblemWords(Locale.ENGLISH);
    notes.forEach(note -> err.println("note: " + words.say(note)));
    job.filter(each -> Proposals.of(each).darkensAccent())
        .ifPresent(
            each ->
                err.println(
                    "note: accent "
                        + each.dealer().accent()
                        + " is too light to read on white (contrast below 4.5);"
                        + " it is darkened in documents"));
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
    input.each(row -> {});
    String asked = home.site().id();
    if (!pdf.content().homeId().equals(asked)) {
      throw new UsageException(
          "the earlier proposal is about home \""
              + pdf.content().homeId()
              + "\", not \""
              + asked
              + "\"");
    }
    if (!input.hadHomes()) {
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

  /** Passes on the homes one by one, and says all that is wrong and what was assumed; once. */
  void each(Consumer<HomeRow> homes) {
    each(homes, problem -> {});
  }

  /** The same; what is wrong with the homes is passed on too. */
  void each(Consumer<HomeRow> homes, Consumer<Problem> found) {
    count = open.each(homes, ((Consumer<Problem>) problems::add).andThen(found));
    problems.end();
    note(open.notes(), open.shared(), err);
  }

  /**
   * The job with one home alone, after reading all of them once; empty when there is none at all.
   *
   * @throws UsageException when there are others, but not this one; it names some
   */
  Optional<Job> only(String siteId) {
    OneHome wanted = new OneHome(siteId);
    each(wanted::look);
    return hadHomes() ? Optional.of(shared().only(wanted.found())) : Optional.empty();
  }

  /** Whether all that was read was free of errors. */
  boolean clean() {
    return problems.count() == 0;
  }

  /** How many problems there were in what was read. */
  int problems() {
    return problems.count();
  }

  /** How many homes and refused rows were read. */
  OpenJob.Count count() {
    return count;
  }

  /** How many rows there are to read. */
  int rows() {
    return open.rows();
  }

  /** Whether there was a home to work on. */
  boolean hadHomes() {
    return open.shared().isPresent() && count.homes() > 0;
  }

  /** What all homes share; only where {@link #each} passes on homes. */
  Job shared() {
    return open.shared().orElseThrow();
  }
}

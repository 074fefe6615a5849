package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.exchange.ReopenException.Reason;
import io.github.brinewright.internal.document.PdfReader;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A proposal, or the filled form of a site visit, opened again: the job that it carries with the
 * one home that it is about.
 *
 * <pre>{@code
 * Reopened earlier = Reopened.read(Files.readAllBytes(path));
 * earlier.problems().forEach(System.err::println);
 * earlier.comparison().flatMap(Comparison::recommended).ifPresent(System.out::println);
 * }</pre>
 */
public final class Reopened {
  private static final int HEADER_WITHIN = 1024;

  private final CarriedJob carried;
  private final @Nullable FilledVisit visit;
  private final JobFiles files;
  private final JobReading reading;

  private Reopened(CarriedJob carried, @Nullable FilledVisit visit, JobFiles prices) {
    this.carried = carried;
    this.visit = visit;
    files = prices.with(SiteCells.FILE, sites());
    reading = JobFolder.read(files);
  }

  /**
   * Opens a document again.
   *
   * @param pdf the bytes of the file
   * @return the document with its job
   * @throws ReopenException with a reason when it is none that can be opened again
   */
  public static Reopened read(byte[] pdf) throws ReopenException {
    CarriedJob carried = CarriedJob.fromJson(attached(pdf));
    return new Reopened(
        carried, carried.ofForm() ? filled(pdf) : null, JobFiles.of(carried.files()));
  }

  private static byte[] attached(byte[] pdf) throws ReopenException {
    int head = Math.min(HEADER_WITHIN, pdf.length);
    if (!new String(pdf, 0, head, StandardCharsets.ISO_8859_1).contains("%PDF-")) {
      throw new ReopenException(Reason.NOT_A_PDF, "the bytes do not begin as a PDF does", null);
    }
    try {
      return PdfReader.attachment(pdf, CarriedJob.FILE)
          .orElseThrow(
              () ->
                  new ReopenException(
                      Reason.NO_DATA, "no file " + CarriedJob.FILE + " is attached", null));
    } catch (IOException unreadable) {
      throw new ReopenException(
          Reason.DAMAGED, String.valueOf(unreadable.getMessage()), unreadable);
    }
  }

  private static FilledVisit filled(byte[] pdf) throws ReopenException {
    try {
      return FilledVisit.read(pdf)
          .orElseThrow(
              () -> new ReopenException(Reason.FIELDS_LOST, "the form has no fields", null));
    } catch (IOException unreadable) {
      throw new ReopenException(
          Reason.DAMAGED, String.valueOf(unreadable.getMessage()), unreadable);
    }
  }

  /** The text of sites.csv with the home. */
  private String sites() {
    return visit == null ? carried.files().getOrDefault(SiteCells.FILE, "") : visit.csv();
  }

  /**
   * {@return the same home with everything else of another job: its dealer, price list and tariffs}
   *
   * @param prices files of the other job; its sites.csv is passed over
   */
  public Reopened atPricesOf(JobFiles prices) {
    return new Reopened(carried, visit, prices);
  }

  /** {@return the files of its job, sites.csv with its one home} */
  public JobFiles files() {
    return files;
  }

  /** {@return what came of reading the job: the job itself with its notes, its problems} */
  public JobReading reading() {
    return reading;
  }

  /** {@return the job with its one home; empty when a file that all homes share has errors} */
  public Optional<Job> job() {
    return reading.job();
  }

  /** {@return everything that is wrong with the job or the home} */
  public List<Problem> problems() {
    return reading.problems();
  }

  /** {@return the id of the home that it is about; empty where a form has none} */
  public String homeId() {
    return visit == null ? carried.site() : visit.cells().getOrDefault("site_id", "");
  }

  /** {@return the home that it is about; empty when it has errors} */
  public Optional<QuotedHome> home() {
    return job().flatMap(job -> job.home(homeId()));
  }

  /**
   * {@return the candidates of the home, as the document showed them; empty when there are errors}
   */
  public Optional<Comparison> comparison() {
    return job().flatMap(job -> home().map(job::compare));
  }

  /** {@return the date of the document, and so of the prices that it carries} */
  public LocalDate date() {
    return carried.date();
  }

  /** {@return what was filled into a form; empty for a proposal} */
  public Optional<FilledVisit> visit() {
    return Optional.ofNullable(visit);
  }

  /** {@return the data as they came with the document, to be kept elsewhere} */
  public CarriedJob carried() {
    return carried;
  }

  /**
   * {@return a problem in the words of the document that it came with: of a form, the label of its
   * field}
   *
   * @param problem one of {@link #problems}
   * @param file name of the document
   */
  public String describe(Problem problem, String file) {
    return visit == null ? problem.toString() : visit.describe(problem, file);
  }
}

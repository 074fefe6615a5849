package io.github.brinewright.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A job whose shared files are read, and whose homes are read one by one, each let go before the
 * next: a sites.csv of a million rows needs no more memory than one of ten.
 *
 * <pre>{@code
 * OpenJob job = JobFolder.open(JobFiles.in(Path.of("job")));
 * job.shared().ifPresent(shared -> job.each(
 *     row -> System.out.println(shared.compare(row.home())),
 *     System.err::println));
 * }</pre>
 */
public final class OpenJob {
  private final @Nullable Job shared;
  private final List<Problem> problems;
  private final List<Note> notes;
  private final @Nullable SiteReader sites;
  private final String sitesFile;

  /**
   * What came of the rows.
   *
   * @param homes that could be read, from 0
   * @param refused rows that have errors, from 0
   */
  public record Count(int homes, int refused) {}

  OpenJob(
      @Nullable Job shared,
      List<Problem> problems,
      List<Note> notes,
      @Nullable SiteReader sites,
      String sitesFile) {
    this.shared = shared;
    this.problems = List.copyOf(problems);
    this.notes = List.copyOf(notes);
    this.sites = sites;
    this.sitesFile = sitesFile;
  }

  /**
   * {@return the job without its homes; empty when a file that all homes share has errors. {@link
   * Job#only} puts one of them in it}
   */
  public Optional<Job> shared() {
    return Optional.ofNullable(shared);
  }

  /** {@return everything that is wrong with the files that all homes share, file by file} */
  public List<Problem> problems() {
    return problems;
  }

  /** {@return what was taken from built-in defaults} */
  public List<Note> notes() {
    return notes;
  }

  /** {@return how many rows sites.csv has below its header, those with errors among them} */
  public int rows() {
    return sites == null ? 0 : sites.rows();
  }

  /**
   * Reads sites.csv row by row. That it changed since the job was opened is a problem too. Call it
   * once.
   *
   * @param homes takes each home that is free of errors; none when {@link #shared} is empty
   * @param found takes everything that is wrong in sites.csv, row by row
   * @return how many rows there were of each kind
   */
  public Count each(Consumer<HomeRow> homes, Consumer<Problem> found) {
    return sites == null
        ? new Count(0, 0)
        : sites.each(
            shared == null ? home -> {} : homes, problem -> found.accept(problem.in(sitesFile)));
  }
}

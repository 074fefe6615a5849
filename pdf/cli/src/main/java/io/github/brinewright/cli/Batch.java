package io.github.brinewright.cli;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.job.HomeRow;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.SafeFile;
import io.github.brinewright.proposal.BatchSummary;
import io.github.brinewright.proposal.HomeDocument;
import io.github.brinewright.proposal.Proposals;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes the documents of homes on all cores as they come; keeps no more of each than a line. */
final class Batch {
  /** Homes begun together, for each core: enough to keep all busy, few enough to stay small. */
  private static final int AT_ONCE = 8;

  private static final int CHUNK = AT_ONCE * Runtime.getRuntime().availableProcessors();

  private final Proposals proposals;
  private final Job job;
  private final LocalDate day;
  private final EarlierFiles earlier;
  private final Progress progress;
  private final List<HomeRow> waiting = new ArrayList<>();
  private final List<Written> written = new ArrayList<>();

  /** The documents of a job go to a folder that is there. */
  Batch(Proposals proposals, Job job, Path target, LocalDate day, Progress progress)
      throws IOException {
    this.proposals = proposals;
    this.job = job;
    this.day = day;
    this.progress = progress;
    earlier = EarlierFiles.in(target);
  }

  /**
   * What came of a home.
   *
   * @param outcome for the summary
   * @param line for the screen
   * @param unchanged whether the document stood there already
   */
  record Written(HomeOutcome outcome, String line, boolean unchanged) {
    boolean failed() {
      return !outcome.failure().isEmpty();
    }
  }

  /** Takes one more home; writes those that wait when there are enough for all cores. */
  void add(HomeRow home) {
    waiting.add(home);
    if (waiting.size() == CHUNK) {
      writeWaiting();
    }
  }

  /** Writes the last ones; what came of all of them, in their order. */
  List<Written> end() {
    writeWaiting();
    progress.done();
    return written;
  }

  private void writeWaiting() {
    written.addAll(waiting.parallelStream().map(this::one).toList());
    waiting.clear();
  }

  private Written one(HomeRow home) {
    try {
      return write(home);
    } catch (RuntimeException failure) {
      String id = home.home().site().id();
      String why =
          Failures.inWords(failure, () -> earlier.folder().resolve("fault-" + id + ".txt"));
      return new Written(
          HomeOutcome.failed(id, why), "home " + id + ": not written: " + why, false);
    } finally {
      progress.step();
    }
  }

  private Written write(HomeRow home) {
    try {
      Proposals own = proposals.ofJob(job.only(home));
      RevisionFile file = RevisionFile.write(own, home.home(), earlier, day);
      HomeDocument document = file.document();
      return new Written(
          HomeOutcome.of(document.comparison(), document.fileName()),
          SummaryLine.of(document.comparison()) + file.said(),
          file.isUnchanged());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Writes the summary of them beside them. */
  static void summarize(BatchSummary summary, Path target) throws IOException {
    SafeFile.write(
        target.resolve(BatchSummary.CSV), summary.toCsv().getBytes(StandardCharsets.UTF_8));
    SafeFile.write(target.resolve(BatchSummary.PDF), summary.toPdf());
  }
}

package io.github.brinewright.cli;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.job.QuotedHome;
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

/**
 * Writes the documents of homes on all cores; keeps no more of each than a line.
 *
 * @param proposals to write
 * @param target folder that they go to
 * @param day of the documents
 */
record Batch(Proposals proposals, Path target, LocalDate day) {
  /** Homes begun together, for each core: enough to keep all busy, few enough to stay small. */
  private static final int AT_ONCE = 8;

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

  /** Writes all that can be written, in any order; what came of them, in theirs. */
  List<Written> write(List<QuotedHome> homes, Progress progress) throws IOException {
    EarlierFiles earlier = EarlierFiles.in(target);
    int chunk = AT_ONCE * Runtime.getRuntime().availableProcessors();
    List<Written> written = new ArrayList<>();
    for (int from = 0; from < homes.size(); from += chunk) {
      written.addAll(
          homes.subList(from, Math.min(homes.size(), from + chunk)).parallelStream()
              .map(home -> one(home, earlier, progress))
              .toList());
    }
    progress.done();
    return written;
  }

  private Written one(QuotedHome home, EarlierFiles earlier, Progress progress) {
    try {
      return written(home, earlier);
    } catch (RuntimeException failure) {
      String id = home.site().id();
      String why = Failures.inWords(failure, () -> target.resolve("fault-" + id + ".txt"));
      return new Written(
          HomeOutcome.failed(id, why), "home " + id + ": not written: " + why, false);
    } finally {
      progress.step();
    }
  }

  private Written written(QuotedHome home, EarlierFiles earlier) {
    try {
      RevisionFile file = RevisionFile.write(proposals, home, earlier, day);
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
  void summarize(BatchSummary summary) throws IOException {
    SafeFile.write(
        target.resolve(BatchSummary.CSV), summary.toCsv().getBytes(StandardCharsets.UTF_8));
    SafeFile.write(target.resolve(BatchSummary.PDF), summary.toPdf());
  }
}

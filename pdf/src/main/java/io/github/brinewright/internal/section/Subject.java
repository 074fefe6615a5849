package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import java.time.LocalDate;
import java.util.List;

/**
 * What the sections about one home speak of.
 *
 * @param comparison the home with its candidates
 * @param dealer who proposes them
 * @param date of the document
 */
public record Subject(Comparison comparison, Dealer dealer, LocalDate date) {
  /** Most candidates that a page has room for. */
  private static final int MOST_COLUMNS = 5;

  /** Whether there is something to recommend. */
  boolean recommends() {
    return showsOptions() && comparison.recommended().isPresent();
  }

  /**
   * Whether options are shown: not of water that is soft enough, and not sized for water that is to
   * be treated first.
   */
  boolean showsOptions() {
    return comparison.verdict().permitsRecommendation();
  }

  /** Whether there is something to sign for: recommended, and no test is missing. */
  boolean signs() {
    return recommends() && comparison.verdict().permitsSignature();
  }

  /** The candidates to show as columns. */
  List<Candidate> columns() {
    return comparison.columns(MOST_COLUMNS);
  }

  /**
   * The candidate to explain in full: the recommended one, or the best of those that break a limit.
   */
  Candidate explained() {
    return comparison.closest();
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What every section about one home needs: stationery and the comparison to show. */
public final class Kit extends Stationery {
  /** Most candidates that a page has room for. */
  static final int MOST_COLUMNS = 5;

  private final Comparison comparison;
  private final Optional<HomeStudy> study;

  /**
   * Everything for the sections of one document.
   *
   * @param comparison what to show
   * @param study of a year in the home, when one was made
   * @param dealer who shows it
   * @param words in the reader's language
   * @param date of the document
   */
  public Kit(
      Comparison comparison,
      Optional<HomeStudy> study,
      Dealer dealer,
      Wording words,
      LocalDate date) {
    super(dealer, words, date, new Tag(Tag.Role.DOCUMENT));
    this.comparison = comparison;
    this.study = study;
  }

  /** What to show. */
  public Comparison comparison() {
    return comparison;
  }

  /** The study of a year in the home, when one was made. */
  public Optional<HomeStudy> study() {
    return study;
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

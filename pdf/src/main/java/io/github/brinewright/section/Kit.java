package io.github.brinewright.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Tag;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.words.Wording;
import io.github.brinewright.year.Study;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What every section about one home needs: stationery and the comparison to show. */
public final class Kit extends Stationery {
  /** Most options that a page has room for. */
  static final int MOST_COLUMNS = 5;

  private final Comparison comparison;
  private final Optional<Study> study;

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
      Comparison comparison, Optional<Study> study, Dealer dealer, Wording words, LocalDate date) {
    super(dealer, words, date, new Tag(Tag.Role.DOCUMENT));
    this.comparison = comparison;
    this.study = study;
  }

  /** What to show. */
  public Comparison comparison() {
    return comparison;
  }

  /** The study of a year in the home, when one was made. */
  public Optional<Study> study() {
    return study;
  }

  /** The options to show as columns. */
  List<Option> columns() {
    return comparison.columns(MOST_COLUMNS);
  }

  /**
   * The option to explain in full: the recommended one, or the best of those that break a limit.
   */
  Option explained() {
    return comparison.closest();
  }
}

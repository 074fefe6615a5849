package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.section.Kit;
import io.github.brinewright.internal.section.ThreeSizes;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One page for the homeowner: a smaller unit, the recommended one and a bigger one.
 *
 * @param comparison the home with its candidates
 * @param dealer who shows it, writing in the language of the home: {@code Job.dealerFor(home)}
 * @param date of the page
 */
public record ComparisonPage(Comparison comparison, Dealer dealer, LocalDate date) {
  /** The PDF file. */
  public byte[] toPdf() {
    Wording words = PdfPages.words(dealer);
    Kit kit = new Kit(comparison, Optional.empty(), dealer, words, date);
    String title = words.text("three.title", Figure.of(comparison.home().site().contact().name()));
    return new PdfPages(kit, title).write(List.of(new ThreeSizes(kit).block()), null);
  }
}

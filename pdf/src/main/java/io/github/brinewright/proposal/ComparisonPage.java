package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.internal.section.Subject;
import io.github.brinewright.internal.section.ThreeSizes;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page for the homeowner: a smaller unit, the recommended one and a bigger one.
 *
 * @param comparison the home with its candidates
 * @param dealer who shows it
 * @param date of the page
 * @param service study of the softener that is already in the house, which is the first column;
 *     null where there is none
 */
public record ComparisonPage(
    Comparison comparison, Dealer dealer, LocalDate date, @Nullable ServiceStudy service) {
  /**
   * A page about a home without a softener.
   *
   * @param comparison the home with its candidates
   * @param dealer who shows it
   * @param date of the page
   */
  public ComparisonPage(Comparison comparison, Dealer dealer, LocalDate date) {
    this(comparison, dealer, date, null);
  }

  /**
   * {@return what the page says, in no language yet}
   *
   * @throws IllegalArgumentException when the study is of another comparison
   */
  public Document model() {
    Phrase customer = Phrase.plain(comparison.home().site().contact().printedName());
    ThreeSizes sizes = new ThreeSizes(new Subject(comparison, dealer, date, service));
    return new Document(
        Document.Kind.PAGE,
        Phrase.text("three.title", customer),
        DealerHead.of(dealer),
        Phrase.text("three.heading", customer),
        List.of(sizes.subject()),
        sizes.sections());
  }

  /** {@return the PDF file} */
  public byte[] toPdf() {
    return toPdf(PdfPages.words(dealer));
  }

  /**
   * {@return the PDF file in other words than the library's own}
   *
   * @param words of {@link DocumentTexts#words}
   */
  public byte[] toPdf(Wording words) {
    return new Pages(dealer, words, date).write(model(), null);
  }
}

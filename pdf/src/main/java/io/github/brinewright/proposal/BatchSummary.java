package io.github.brinewright.proposal;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.exchange.OutcomesCsv;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.BatchSections;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;

/**
 * Many homes at a glance, for whoever visits them: which need a test or a treatment first, and what
 * each is quoted.
 *
 * <pre>{@code
 * List<HomeOutcome> outcomes = new ArrayList<>();
 * proposals.all(day).forEach(each -> outcomes.add(HomeOutcome.of(each.comparison(), each.fileName())));
 * byte[] page = new BatchSummary(outcomes, job.dealer(), day).toPdf();
 * }</pre>
 *
 * @param outcomes of the homes, in their order
 * @param dealer who quotes them
 * @param date of the summary
 */
public record BatchSummary(List<HomeOutcome> outcomes, Dealer dealer, LocalDate date) {
  /** Name of the file as PDF. */
  public static final String PDF = "summary.pdf";

  /** Name of the file as CSV. */
  public static final String CSV = "summary.csv";

  /**
   * Keeps its own copy of the list.
   *
   * @param outcomes of the homes, in their order
   * @param dealer who quotes them
   * @param date of the summary
   */
  public BatchSummary {
    outcomes = List.copyOf(outcomes);
  }

  /** {@return what the page says, in no language yet} */
  public Document model() {
    Phrase title = Phrase.text("summary.heading", Phrase.of(Figure.of(outcomes.size())));
    return new Document(
        Document.Kind.PAGE,
        title,
        DealerHead.of(dealer),
        title,
        List.of(Phrase.text("summary.lead", new Phrase.Day(date))),
        new BatchSections(outcomes).sections());
  }

  /** {@return the PDF file; one page for some thirty homes} */
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

  /** {@return the same as CSV: a row for each home, with the codes of all that was found} */
  public String toCsv() {
    return OutcomesCsv.of(outcomes);
  }
}

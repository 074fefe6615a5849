package io.github.brinewright.proposal;

import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Letterhead;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;

/**
 * A document of an embedder's own, of the same pieces and in the same layout as ours. The same
 * model, dealer and date give the same bytes.
 *
 * <pre>{@code
 * byte[] pdf = OwnDocument.report(Phrase.plain("Our town"), dealer, day, sections).toPdf();
 * }</pre>
 *
 * @param model what it says
 * @param dealer whose paper, colour and language it has
 * @param date of the document
 */
public record OwnDocument(Document model, Dealer dealer, LocalDate date) {
  /**
   * {@return a report with the dealer at its head and the date below its heading}
   *
   * @param heading of it, and the title that a reader's program lists
   * @param dealer who reports
   * @param date of the report
   * @param sections in the order in which they are read, each with a key of its own
   * @throws IllegalArgumentException when two sections have the same key
   */
  public static OwnDocument report(
      Phrase heading, Dealer dealer, LocalDate date, List<Section> sections) {
    Letterhead head = DealerHead.of(dealer);
    List<Phrase> details = List.of(new Phrase.Day(date));
    return new OwnDocument(
        new Document(Document.Kind.REPORT, heading, head, heading, details, sections),
        dealer,
        date);
  }

  /**
   * {@return the PDF file}
   *
   * @throws IllegalArgumentException when the words lack a text, or two fields have one name
   */
  public byte[] toPdf() {
    return toPdf(PdfPages.words(dealer));
  }

  /**
   * {@return the PDF file in other words than the library's own}
   *
   * @param words of {@link DocumentTexts#words}
   * @throws IllegalArgumentException when the words lack a text, or two fields have one name
   */
  public byte[] toPdf(Wording words) {
    return new Pages(dealer, words, date).write(model, null);
  }
}

package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.Customer;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.ControlSettings;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;

/**
 * The sheet by which an installer sets up one candidate, as PDF.
 *
 * @param comparison the home with its candidates
 * @param candidate the one to set up
 * @param dealer who installs it
 * @param date of the sheet
 */
public record SettingsSheet(
    Comparison comparison, Candidate candidate, Dealer dealer, LocalDate date) {
  /** {@return what the sheet says, in no language yet} */
  public Document model() {
    Customer customer = comparison.home().site().contact();
    Phrase unit = Phrase.plain(candidate.softener().name());
    return new Document(
        Document.Kind.SHEET,
        Phrase.text("settings.title", unit, Phrase.plain(customer.name())),
        DealerHead.of(dealer),
        Phrase.text("settings.heading", unit),
        List.of(
            Phrase.plain(customer.name()),
            Phrase.plain(customer.street()),
            Phrase.plain(customer.town()),
            new Phrase.Day(date)),
        new ControlSettings(comparison, candidate).sections());
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

package io.github.brinewright.proposal;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.home.Customer;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.internal.section.ServiceSections;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two pages on the softener that is already in a home: what it does, what is wrong, and what comes
 * of setting it right, putting a meter on it or replacing it. {@link Proposals} writes it of a job.
 *
 * @param study of the softener
 * @param dealer who reports
 * @param date of the report
 * @param carried the job that the file carries, so that it can be opened again; null for none
 */
public record ServiceReport(
    ServiceStudy study, Dealer dealer, LocalDate date, @Nullable CarriedJob carried) {
  /**
   * A report that carries no data of its own.
   *
   * @param study of the softener
   * @param dealer who reports
   * @param date of the report
   */
  public ServiceReport(ServiceStudy study, Dealer dealer, LocalDate date) {
    this(study, dealer, date, null);
  }

  private static final int PAGES = 2;

  /** {@return what the report says, in no language yet} */
  public Document model() {
    return model(ServiceSections.Print.USUAL);
  }

  private Document model(ServiceSections.Print print) {
    Customer customer = study.comparison().home().site().contact();
    return new Document(
        Document.Kind.REPORT,
        Phrase.text("service.title", Phrase.plain(customer.printedName())),
        DealerHead.of(dealer),
        Phrase.text("service.heading"),
        List.of(
            Phrase.plain(customer.printedName()),
            Phrase.plain(customer.street()),
            Phrase.plain(customer.town()),
            new Phrase.Day(date)),
        new ServiceSections(study, print).sections());
  }

  /** {@return the PDF file} */
  public byte[] toPdf() {
    return toPdf(PdfPages.words(dealer));
  }

  /**
   * {@return the PDF file in other words than the library's own} What it rests on is set small
   * where it would need more than two pages otherwise.
   *
   * @param words of {@link DocumentTexts#words}
   */
  public byte[] toPdf(Wording words) {
    Pages pages = new Pages(dealer, words, date);
    boolean fits = pages.count(model()) <= PAGES;
    Document document = fits ? model() : model(ServiceSections.Print.SMALL);
    return pages.write(
        document,
        carried == null ? null : PdfPages.attachment(carried, words.text("service.carried")));
  }
}

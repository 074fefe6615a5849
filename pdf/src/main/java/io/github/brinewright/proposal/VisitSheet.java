package io.github.brinewright.proposal;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.internal.section.VisitForm;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Map;

/**
 * The form of a site visit as PDF, to be filled on a screen. It carries the job it belongs to, so
 * that a proposal can be made from the filled form alone.
 *
 * @param dealer who visits
 * @param tariffs that the home may have
 * @param cells of sites.csv that it begins with, by column; none for a blank form
 * @param carried the job without its homes
 */
public record VisitSheet(
    Dealer dealer, List<Tariff> tariffs, Map<String, String> cells, CarriedJob carried) {
  /**
   * Keeps its own copies of the lists.
   *
   * @param dealer who visits
   * @param tariffs that the home may have
   * @param cells of sites.csv that it begins with, by column; none for a blank form
   * @param carried the job without its homes
   */
  public VisitSheet {
    tariffs = List.copyOf(tariffs);
    cells = Map.copyOf(cells);
  }

  /** {@return what the form asks, in no language yet} */
  public Document model() {
    return new Document(
        Document.Kind.FORM,
        Phrase.text("form.title"),
        DealerHead.of(dealer),
        Phrase.text("form.heading"),
        List.of(Phrase.text("form.lead")),
        new VisitForm(cells, tariffs, JobFolder.resins(JobFiles.of(carried.files()))).sections());
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
    return new Pages(dealer, words, carried.date())
        .write(model(), PdfPages.attachment(carried, words.text("form.carried")));
  }
}

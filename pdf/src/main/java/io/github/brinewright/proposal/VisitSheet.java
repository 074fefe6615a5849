package io.github.brinewright.proposal;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.section.Stationery;
import io.github.brinewright.internal.section.VisitForm;
import io.github.brinewright.job.Dealer;
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
  /** Keeps its own copies of the lists. */
  public VisitSheet {
    tariffs = List.copyOf(tariffs);
    cells = Map.copyOf(cells);
  }

  /** The PDF file. */
  public byte[] toPdf() {
    Wording words = PdfPages.words(dealer);
    Stationery stationery =
        new Stationery(dealer, words, carried.date(), new Tag(Tag.Role.DOCUMENT));
    VisitForm form = new VisitForm(stationery, cells, tariffs);
    return new PdfPages(stationery, words.text("form.title"))
        .write(List.of(form.block()), PdfPages.attachment(carried, words.text("form.carried")));
  }
}

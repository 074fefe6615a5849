package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.Customer;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The head of a settings sheet.
 *
 * @param dealer who sets the softener
 * @param date of the sheet
 */
public record SheetHead(Dealer dealer, LocalDate date) {
  /** What a sheet is called: in a list of documents, after the customer, and on its first page. */
  public record Name(Function<Phrase, Phrase> title, Phrase heading) {
    /** The softener in the house. */
    public static Name present(boolean withMeter) {
      return of(withMeter ? "settings.presentMetered" : "settings.present");
    }

    /** A unit of a price list. */
    public static Name listed(Softener softener) {
      return of("settings.listed", Phrase.plain(softener.name()));
    }

    /** A softener without a name, called by its rating or, without one, by its bed. */
    public static Name unlisted(Softener softener) {
      return softener
          .rated()
          .map(rated -> of("settings.unlisted", Phrase.of(Figure.of(rated))))
          .orElseGet(() -> of("settings.unlistedBed", new Phrase.Bed(softener.resinVolume())));
    }

    private static Name of(String key, Phrase... parts) {
      return new Name(
          customer ->
              Phrase.text(
                  key + ".title",
                  Stream.concat(Stream.of(customer), Stream.of(parts)).toArray(Phrase[]::new)),
          Phrase.text(key, parts));
    }
  }

  /** The sheet of a softener at a home. */
  public Document document(Name name, Comparison comparison, List<Section> sections) {
    Customer customer = comparison.home().site().contact();
    return new Document(
        Document.Kind.SHEET,
        name.title().apply(Phrase.plain(customer.printedName())),
        DealerHead.of(dealer),
        name.heading(),
        List.of(
            Phrase.plain(customer.printedName()),
            Phrase.plain(customer.street()),
            Phrase.plain(customer.town()),
            new Phrase.Day(date)),
        sections);
  }
}

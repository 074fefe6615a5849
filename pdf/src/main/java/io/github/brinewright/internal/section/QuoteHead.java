package io.github.brinewright.internal.section;

import io.github.brinewright.home.Customer;
import io.github.brinewright.job.QuoteRecord;
import io.github.brinewright.model.Phrase;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Whom a quote is for and what it is known by, in one line below its heading. */
public final class QuoteHead {
  private QuoteHead() {}

  /**
   * Address and contact of the customer; number, revision and days of the quote; who made it. What
   * is not stated is left out.
   *
   * @param validDays that it stands from its date
   */
  public static List<Phrase> of(
      Customer customer, QuoteRecord record, LocalDate date, int validDays) {
    return Stream.of(
            Phrase.plain(customer.street()),
            Phrase.plain(customer.town()),
            Phrase.plain(customer.phone()),
            Phrase.plain(customer.email()),
            stated("record.number", record.number()),
            record.isRevised()
                ? stated("record.revision", String.valueOf(record.revision()))
                : Phrase.NONE,
            new Phrase.Day(date),
            Phrase.text("valid", new Phrase.Day(date.plusDays(validDays))),
            stated("record.rep", record.rep()))
        .filter(phrase -> !phrase.isEmpty())
        .toList();
  }

  private static Phrase stated(String key, String text) {
    return text.isEmpty() ? Phrase.NONE : Phrase.text(key, Phrase.plain(text));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.job.OfferText;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a quote says beside its price, so far as it is stated. */
final class QuoteNotes {
  private QuoteNotes() {}

  /** What goes with a price, each below its name; empty when nothing is stated. */
  static Optional<Notes> of(Subject subject) {
    List<Row> rows = new ArrayList<>();
    for (OfferText kind : OfferText.values()) {
      add(rows, "record." + kind, subject.dealer().offerText(kind));
    }
    add(rows, "record.notes", subject.record().notes());
    return notes(rows);
  }

  /** The notes for the customer alone, where there is no price; empty when there are none. */
  static Optional<Notes> withoutPrice(Subject subject) {
    List<Row> rows = new ArrayList<>();
    add(rows, "record.notes", subject.record().notes());
    return notes(rows);
  }

  private static Optional<Notes> notes(List<Row> rows) {
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Notes(rows));
  }

  private static void add(List<Row> rows, String key, String text) {
    if (!text.isEmpty()) {
      rows.add(Row.of(key, Phrase.text(key), Phrase.plain(text)));
    }
  }
}

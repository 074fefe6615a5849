package io.github.brinewright.internal.section;

import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a quote says beside its price, so far as it is stated. */
final class QuoteNotes {
  private QuoteNotes() {}

  /** Short texts below their names; empty when none is stated. */
  static Optional<Notes> of(Subject subject) {
    List<Row> rows = new ArrayList<>();
    add(rows, "record.notes", subject.record().notes());
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Notes(rows));
  }

  private static void add(List<Row> rows, String key, String text) {
    if (!text.isEmpty()) {
      rows.add(Row.of(key, Phrase.text(key), Phrase.plain(text)));
    }
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Item;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * Something that may be added to a package.
 *
 * @param subject it belongs to
 * @param item that may be added
 */
record Extra(Subject subject, Item item) {
  /** What it adds to the first package, tax included; negative where it is taken off. */
  Money price() {
    SalePackage first = subject.packages().all().get(0);
    return first.total(List.of(item)).minus(first.total());
  }

  /** What the homeowner reads of it, and what it takes afterwards. */
  Phrase said() {
    List<Phrase> sentences = new ArrayList<>();
    if (!item.text().isEmpty()) {
      sentences.add(new Phrase.Local(item.text()));
    }
    if (item.upkeep().isPositive()) {
      sentences.add(Phrase.text("choices.upkeep", Phrase.of(Figure.of(item.upkeep()))));
    }
    item.renewedEvery()
        .ifPresent(
            years ->
                sentences.add(
                    Phrase.text(
                        "choices.renewed",
                        Phrase.of(Figure.of(years)),
                        Phrase.of(Figure.of(item.renewal())))));
    return Phrase.sentences(sentences);
  }
}

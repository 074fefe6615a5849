package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What the proposed unit costs: installed, by the month, and a year to run; and the salt it takes.
 *
 * @param candidate proposed
 */
record DealFigures(Candidate candidate) {
  Facts facts() {
    List<Row> facts = new ArrayList<>();
    if (!candidate.offer().isUnpriced()) {
      facts.add(Row.of(price(), Figure.of(candidate.quote().total())));
      candidate.quote().terms().financing().map(this::month).ifPresent(facts::add);
    }
    facts.add(Row.of("opening.fact.year", Figure.about(candidate.yearly().total())));
    facts.add(salt());
    return new Facts(facts);
  }

  private String price() {
    return candidate.offer().installation().isZero()
        ? "opening.fact.equipment"
        : "opening.fact.price";
  }

  private Row month(Credit credit) {
    Phrase label =
        Phrase.text(
            "opening.fact.month",
            Phrase.of(Figure.of(credit.months())),
            Phrase.of(new Figure.Share(credit.yearlyRate().doubleValue(), 2)),
            Phrase.of(Figure.of(candidate.quote().deposit())));
    return Row.of(
        "opening.fact.month",
        label,
        Phrase.of(Figure.of(candidate.quote().monthlyPayment().orElseThrow())));
  }

  /** To the bag, and not less than one. */
  private Row salt() {
    Mass year = candidate.design().year().orElseThrow().salt();
    return Row.of(
        "opening.fact.bags",
        Phrase.text("opening.fact.bags", Phrase.of(new Figure.UsualBag())),
        Phrase.text("opening.bags", Phrase.of(new Figure.Bags(year))));
  }
}

package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the proposed unit costs: installed, by the month, and a year to run; and the salt it takes.
 *
 * @param candidate proposed
 * @param credit that a monthly payment is stated of
 */
record DealFigures(Candidate candidate, Optional<PaymentWay> credit) {
  Facts facts() {
    List<Row> facts = new ArrayList<>();
    if (!candidate.offer().isUnpriced()) {
      facts.add(Row.of(price(), Figure.of(candidate.quote().total())));
      credit.map(this::month).ifPresent(facts::add);
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

  private Row month(PaymentWay way) {
    PaymentPlan plan = new PaymentPlan(way, candidate.quote().total());
    Phrase label =
        Phrase.text(
            "opening.fact.month",
            Phrase.of(Figure.of(way.months())),
            rate(plan),
            Phrase.of(Figure.of(plan.down())));
    return Row.of("opening.fact.month", label, Phrase.of(Figure.of(plan.monthly().get(0))));
  }

  /** The annual percentage rate; where nothing is left to pay by the month, the nominal one. */
  static Phrase rate(PaymentPlan plan) {
    BigDecimal rate = plan.annualRate().orElseGet(plan.way()::yearlyRate);
    return Phrase.of(new Figure.Share(rate.doubleValue(), 2));
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

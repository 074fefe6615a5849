package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.RuleBook;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * The bed of the present softener as a price list of its own, so that it is set by the same rules,
 * margins and costs as any other. What no setting can change, and what the law asks of units that
 * are sold, rules nothing out: the bed is there already.
 */
final class PresentBed {
  private static final int LEAST_POUNDS = 3;
  private static final int MOST_POUNDS = 15;
  private static final RuleBook RULES = rules();

  private final FoundSoftener found;
  private final Comparison comparison;

  PresentBed(FoundSoftener found, Comparison comparison) {
    this.found = found;
    this.comparison = comparison;
  }

  private static RuleBook rules() {
    RuleBook.Builder rules = RuleBook.builder();
    for (DesignRule rule : DesignRule.values()) {
      if (!rule.essential()) {
        rules.without(rule);
      }
    }
    return rules.build();
  }

  /** The best setting under a control; empty where none serves the home. */
  Optional<Candidate> under(Control control, Money meter, Money visit) {
    return Optional.of(all(control, meter, visit).get(0)).filter(Candidate::feasible);
  }

  /** Every setting under a control, the best first. */
  List<Candidate> all(Control control, Money meter, Money visit) {
    Softener bed = found.with(Set.of(control), dosages());
    Offer offer = Offer.of(bed, meter).installation(visit).build();
    return alone(offer).compare(comparison.home().site(), comparison.tariff()).candidates();
  }

  private PriceList alone(Offer offer) {
    PriceList own = comparison.priceList();
    return PriceList.builder(List.of(offer))
        .terms(own.terms())
        .limits(own.limits())
        .margins(own.margins())
        .rules(RULES)
        .build();
  }

  private List<SaltDosage> dosages() {
    CapacityCurve curve = found.curve();
    List<SaltDosage> whole =
        IntStream.rangeClosed(LEAST_POUNDS, MOST_POUNDS)
            .mapToObj(SaltDosage::ofPoundsPerCubicFoot)
            .filter(curve::covers)
            .toList();
    return whole.isEmpty() ? List.of(curve.lowest()) : whole;
  }
}

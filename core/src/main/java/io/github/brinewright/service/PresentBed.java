package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.RuleBook;
import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.FoundUnknowns;
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
 * are sold, rules nothing out: the bed is there already. {@link ServiceStudy} runs its settings
 * through simulated years; for a whole town their forecast is at hand in each candidate.
 *
 * <p>Immutable.
 */
public final class PresentBed {
  private static final int LEAST_POUNDS = 3;
  private static final int MOST_POUNDS = 15;
  private static final RuleBook RULES = rules();

  private final FoundSoftener found;
  private final Site site;
  private final Tariff tariff;
  private final PriceList own;

  PresentBed(FoundSoftener found, Comparison comparison) {
    this(found, comparison.home(), comparison.tariff(), comparison.priceList());
  }

  /**
   * The bed of a softener as it was found.
   *
   * @param found the softener
   * @param home that it stands in
   * @param tariff in the currency of the price list
   * @param own whose terms, limits and margins hold; its offers and items are left out
   */
  public PresentBed(FoundSoftener found, HomeLoad home, Tariff tariff, PriceList own) {
    this.found = found;
    site = home.site();
    this.tariff = tariff;
    this.own = own;
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

  /**
   * {@return the best setting under a control; empty where none serves the home}
   *
   * @param control that the bed has, or gets
   * @param meter price of the control
   * @param visit price of the visit
   */
  public Optional<Candidate> under(Control control, Money meter, Money visit) {
    return Optional.of(all(control, meter, visit).get(0)).filter(Candidate::feasible);
  }

  /**
   * {@return every setting under a control, in whole pounds of salt a cubic foot, the best first}
   *
   * @param control that the bed has, or gets
   * @param meter price of the control
   * @param visit price of the visit
   */
  public List<Candidate> all(Control control, Money meter, Money visit) {
    Softener bed = found.with(Set.of(control), dosages());
    Offer offer = Offer.of(bed, meter).installation(visit).build();
    return alone(offer).compare(site, tariff).candidates();
  }

  private PriceList alone(Offer offer) {
    return PriceList.builder(List.of(offer))
        .terms(own.terms())
        .limits(own.limits())
        .margins(own.margins())
        .rules(RULES)
        .build();
  }

  /**
   * {@return a setting of this bed as it runs in one draw of its age: it holds more or less than
   * reckoned with, and is set as stated}
   *
   * @param candidate one of {@link #all} that its bed can serve the home with
   * @param unknown draw of its age
   * @throws java.util.NoSuchElementException when its bed cannot serve the home
   */
  public BedSettings aged(Candidate candidate, FoundUnknowns unknown) {
    BedSettings stated = candidate.design().bed().orElseThrow();
    double share = found.shareOfMiddle(unknown);
    return share == 1 ? stated : stated.holding(stated.capacity().times(share));
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

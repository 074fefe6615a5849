package io.github.brinewright.comparison;

import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.cost.YearlyCost;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.home.Site;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import java.util.ArrayList;
import java.util.List;

/**
 * Compares a dealer's offers for homes. Immutable; may be shared between threads.
 *
 * @param offers what the dealer sells
 * @param terms how it is sold
 * @param limits the dealer's limits
 */
public record PriceList(List<Offer> offers, Terms terms, Limits limits) {
  /**
   * @throws IllegalArgumentException when there is no offer
   */
  public PriceList {
    offers = List.copyOf(offers);
    if (offers.isEmpty()) {
      throw new IllegalArgumentException("there is no unit to compare");
    }
  }

  /** A comparer with the usual terms and limits. */
  public static PriceList of(List<Offer> offers) {
    return new PriceList(offers, Terms.USUAL, Limits.USUAL);
  }

  /** Works out every setting of every offer for a home. */
  public Comparison compare(Site site, Tariff tariff) {
    HomeLoad home = new HomeLoad(site);
    Sizer sizer = sizer(home);
    List<Candidate> candidates = new ArrayList<>();
    for (Offer offer : offers) {
      for (Setup setup : Setup.of(offer.softener())) {
        candidates.add(appraise(sizer.design(setup), offer, tariff));
      }
    }
    candidates.sort(Preference.ORDER);
    return new Comparison(home, HomeRule.findings(home), tariff, candidates);
  }

  /** A sizer with this dealer's limits. */
  public Sizer sizer(HomeLoad home) {
    return new Sizer(home, limits.reserveRisk());
  }

  /** Prices a design and looks for what speaks against it. */
  public Candidate appraise(Design design, Offer offer, Tariff tariff) {
    Quote quote = new Quote(offer, design.setup().control(), terms);
    YearlyCost yearly = new YearlyCost(design, offer, tariff);
    LifeCost life = new LifeCost(quote, yearly, tariff.escalation());
    return new Candidate(design, DesignRule.findings(design, limits), quote, yearly, life);
  }
}

package io.github.brinewright.sale;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.BillLine;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.simulation.HardWater;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A unit, or the softener that is in the house, with all that its price holds.
 *
 * @param kind why it is offered
 * @param candidate how it is set up and what it costs; of {@link PackageKind#KEEP} the bed that is
 *     there
 * @param yearlyCost what a year costs to run
 * @param hardWater hard water of a mean year by cause
 */
public record SalePackage(
    PackageKind kind, Candidate candidate, Money yearlyCost, Optional<HardWater> hardWater) {

  /** {@return a package of a candidate} */
  static SalePackage of(PackageKind kind, Candidate candidate) {
    return new SalePackage(kind, candidate, candidate.yearly().total(), candidate.hardWater());
  }

  /** {@return its price without anything added} */
  public Quote quote() {
    return candidate.quote();
  }

  /** {@return its lines without anything added} */
  public List<BillLine> lines() {
    return quote().lines();
  }

  /** {@return what the customer pays without anything added, tax included} */
  public Money total() {
    return quote().total();
  }

  /**
   * {@return what the customer pays with these added, tax included}
   *
   * @param extras of the same price list
   * @throws IllegalArgumentException when one of them is in the package already, or stands twice
   */
  public Money total(Collection<Item> extras) {
    return quote().with(extras).total();
  }

  /** {@return whether no price is known} */
  public boolean isUnpriced() {
    return candidate.offer().isUnpriced();
  }
}

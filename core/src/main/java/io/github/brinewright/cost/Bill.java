package io.github.brinewright.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * The lines of a price in exact decimals: what is sold, each line with its tax, then what is taken
 * off, in the order of the price list. Each line and each tax is rounded once to the smallest unit
 * of the currency; the total is their sum. What is taken off never exceeds what is left, nor its
 * tax the tax so far, so that a bill is never below zero. A share is taken off the softener, its
 * installation and what comes with them; what the customer adds keeps its own price. Source:
 * product and sum of the figures named.
 */
final class Bill {
  private final List<BillLine> lines = new ArrayList<>();
  private final BigDecimal taxRate;
  private final Money zero;
  private Money left;
  private Money taxedLeft;
  private Money taxLeft;
  private Money own;
  private Money ownTaxed;

  private Bill(Terms terms, Money zero) {
    taxRate = terms.taxRate();
    this.zero = zero;
    left = zero;
    taxedLeft = zero;
    taxLeft = zero;
    own = zero;
    ownTaxed = zero;
  }

  /** The lines of a quote. */
  static List<BillLine> lines(Quote quote) {
    Bill bill = new Bill(quote.terms(), Money.zero(quote.offer().currency()));
    bill.sell(BillLine.Part.SOFTENER, quote.equipment(), true);
    bill.sell(
        BillLine.Part.INSTALLATION,
        quote.offer().installation(),
        quote.terms().taxOnInstallation());
    quote.items().stream().filter(item -> !item.kind().reduces()).forEach(bill::sell);
    Set<String> there = quote.items().stream().map(Item::id).collect(Collectors.toSet());
    quote.items().stream()
        .filter(item -> item.kind().reduces() && there.containsAll(item.bundled()))
        .forEach(bill::takeOff);
    return List.copyOf(bill.lines);
  }

  private void sell(BillLine.Part part, Money amount, boolean taxed) {
    add(part, Optional.empty(), amount, taxed ? amount : zero);
    own = own.plus(amount);
    ownTaxed = taxed ? ownTaxed.plus(amount) : ownTaxed;
  }

  private void sell(Item item) {
    Money amount = item.amount();
    Money taxed = item.taxed() ? amount : zero;
    add(BillLine.Part.ITEM, Optional.of(item), amount, taxed);
    if (item.need() != ItemNeed.OFFERED) {
      own = own.plus(amount);
      ownTaxed = ownTaxed.plus(taxed);
    }
  }

  private void add(BillLine.Part part, Optional<Item> item, Money amount, Money taxed) {
    Money tax = tax(taxed);
    lines.add(new BillLine(part, item, amount, tax));
    left = left.plus(amount);
    taxedLeft = taxedLeft.plus(taxed);
    taxLeft = taxLeft.plus(tax);
  }

  private void takeOff(Item item) {
    Money amount = least(share(item, own).orElseGet(item::amount), left);
    Money taxed = item.taxed() ? taxedPart(item, amount) : zero;
    Money tax = item.taxed() && taxed.equals(taxedLeft) ? taxLeft : least(tax(taxed), taxLeft);
    lines.add(new BillLine(BillLine.Part.ITEM, Optional.of(item), amount.negated(), tax.negated()));
    left = left.minus(amount);
    taxedLeft = taxedLeft.minus(taxed);
    taxLeft = taxLeft.minus(tax);
  }

  /** How much of what is taken off lowers the taxed sum: of a share, that of the taxed lines. */
  private Money taxedPart(Item item, Money amount) {
    return least(least(share(item, ownTaxed).orElse(amount), amount), taxedLeft);
  }

  private Money tax(Money taxed) {
    return taxed.multipliedBy(taxRate, RoundingMode.HALF_EVEN);
  }

  private static Optional<Money> share(Item item, Money of) {
    return item.share().map(share -> of.multipliedBy(share, RoundingMode.HALF_EVEN));
  }

  private static Money least(Money one, Money other) {
    return one.isLessThan(other) ? one : other;
  }
}

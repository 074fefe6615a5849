package io.github.brinewright.cost;

import io.github.brinewright.softener.Control;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * The price of a candidate with what is sold beside it: exact decimals, each line and the tax on it
 * rounded once to the smallest unit of the currency, the total their sum. What is sold comes first;
 * then what is taken off, in the order of the items, never more than what is left: a share of the
 * softener, its installation and what comes with them, and a bundle only where all that it names is
 * there. Example: 999.99 and 333.33 for the installation, 6.25 % tax on the softener → 62.50 tax,
 * 1,395.82 in all. Source: product and sum of the figures named.
 *
 * <p>Immutable; quotes of the same are equal.
 */
public final class Quote {
  private final Offer offer;
  private final Control control;
  private final Terms terms;
  private final List<Item> items;
  private final List<BillLine> lines;
  private final Money total;

  /**
   * Keeps its own copy of the items, and reckons the bill once.
   *
   * @param offer the unit with its prices
   * @param control the control it is bought with; one that it is sold with
   * @param terms tax, deposit and credit
   * @param items what else is sold or taken off
   * @throws IllegalArgumentException when the softener is not sold with the control, an item stands
   *     twice, or is in another currency
   */
  public Quote(Offer offer, Control control, Terms terms, List<Item> items) {
    this.offer = offer;
    this.control = control;
    this.terms = terms;
    this.items = List.copyOf(items);
    Item.check(items, offer.currency());
    if (!offer.softener().controls().contains(control)) {
      throw new IllegalArgumentException(
          "the softener "
              + offer.softener().id()
              + " is not sold with the control "
              + control
              + ", but with "
              + offer.softener().controls());
    }
    lines = Bill.lines(this);
    total = sum(BillLine::total);
  }

  /**
   * A quote of a unit alone.
   *
   * @param offer the unit with its prices
   * @param control the control it is bought with; one that it is sold with
   * @param terms tax, deposit and credit
   * @throws IllegalArgumentException when the softener is not sold with the control
   */
  public Quote(Offer offer, Control control, Terms terms) {
    this(offer, control, terms, List.of());
  }

  /**
   * {@return the same quote with more items, in the order of their list}
   *
   * @param more items that the quote does not have yet
   * @throws IllegalArgumentException when an item stands twice, or is in another currency
   */
  public Quote with(Collection<Item> more) {
    return new Quote(offer, control, terms, Stream.concat(items.stream(), more.stream()).toList());
  }

  private Money sum(Function<BillLine, Money> part) {
    return Money.total(lines.stream().map(part).toList());
  }

  /** {@return the unit with its prices} */
  public Offer offer() {
    return offer;
  }

  /** {@return the control it is bought with} */
  public Control control() {
    return control;
  }

  /** {@return tax, deposit and credit} */
  public Terms terms() {
    return terms;
  }

  /** {@return what else is sold or taken off, each once} */
  public List<Item> items() {
    return items;
  }

  /** {@return what is sold, then what is taken off, line by line} */
  public List<BillLine> lines() {
    return lines;
  }

  /** {@return the price of the unit with its control} */
  public Money equipment() {
    return offer.equipment(control);
  }

  /** {@return the price of all lines before tax} */
  public Money net() {
    return sum(BillLine::amount);
  }

  /** {@return the sales tax: the sum of the tax on each line} */
  public Money tax() {
    return sum(BillLine::tax);
  }

  /** {@return what the upkeep of all items costs in a year} */
  public Money upkeep() {
    return Item.upkeep(items, offer.currency());
  }

  /** {@return what the customer pays} */
  public Money total() {
    return total;
  }

  /** {@return what is due with the signature} */
  public Money deposit() {
    return total().multipliedBy(terms.depositShare(), RoundingMode.HALF_EVEN);
  }

  /** {@return what is due after the installation} */
  public Money balance() {
    return total().minus(deposit());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Quote quote
        && offer.equals(quote.offer)
        && control == quote.control
        && terms.equals(quote.terms)
        && items.equals(quote.items);
  }

  @Override
  public int hashCode() {
    return Objects.hash(offer, control, terms, items);
  }

  @Override
  public String toString() {
    return "Quote of " + offer.softener().id() + " with " + control + ": " + total + ", " + lines;
  }
}

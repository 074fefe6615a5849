package io.github.brinewright.cost;

import io.github.brinewright.softener.Control;
import java.math.RoundingMode;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The price of a candidate: exact decimals, each line rounded once to the smallest unit of the
 * currency, the total the sum of the lines. Example: 999.99 and 333.33 for the installation, 6.25 %
 * tax on the softener → 62.50 tax, 1,395.82 in all.
 *
 * @param offer the unit with its prices
 * @param control the control it is bought with; one that it is sold with
 * @param terms tax, deposit and credit
 */
public record Quote(Offer offer, Control control, Terms terms) {
  /**
   * @param offer the unit with its prices
   * @param control the control it is bought with; one that it is sold with
   * @param terms tax, deposit and credit
   * @throws IllegalArgumentException when the softener is not sold with the control
   */
  public Quote {
    if (!offer.softener().controls().contains(control)) {
      throw new IllegalArgumentException(
          "the softener "
              + offer.softener().id()
              + " is not sold with the control "
              + control
              + ", but with "
              + offer.softener().controls());
    }
  }

  /** {@return the price of the unit with its control} */
  public Money equipment() {
    return offer.equipment(control);
  }

  /** {@return the price of unit and installation before tax} */
  public Money net() {
    return equipment().plus(offer.installation());
  }

  /** {@return the sales tax} */
  public Money tax() {
    Money taxed = terms.taxOnInstallation() ? net() : equipment();
    return taxed.multipliedBy(terms.taxRate(), RoundingMode.HALF_EVEN);
  }

  /** {@return what the customer pays} */
  public Money total() {
    return net().plus(tax());
  }

  /** {@return what is due with the signature} */
  public Money deposit() {
    return total().multipliedBy(terms.depositShare(), RoundingMode.HALF_EVEN);
  }

  /** {@return what is due after the installation} */
  public Money balance() {
    return total().minus(deposit());
  }

  /** {@return the monthly payment when the balance is financed; empty when no credit is offered} */
  public Optional<Money> monthlyPayment() {
    return terms.financing().map(credit -> credit.payment(balance()));
  }

  /** {@return the deposit and all monthly payments; empty when no credit is offered} */
  public Optional<Money> totalFinanced() {
    return terms.financing().map(credit -> deposit().plus(credit.totalPaid(balance())));
  }
}

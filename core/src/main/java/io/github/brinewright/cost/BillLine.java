package io.github.brinewright.cost;

import java.util.Optional;
import org.joda.money.Money;

/**
 * One line of a bill.
 *
 * @param part what it is of
 * @param item the item; empty of the softener and of its installation
 * @param amount before tax; negative where it is taken off
 * @param tax on it, rounded once to the smallest unit of the currency; negative where it is taken
 *     off
 */
public record BillLine(Part part, Optional<Item> item, Money amount, Money tax) {
  /** What a line of a bill is of. */
  public enum Part {
    /** The softener with its control. */
    SOFTENER,
    /** Its installation. */
    INSTALLATION,
    /** Something else that is sold, or taken off. */
    ITEM
  }

  /** {@return the line with its tax} */
  public Money total() {
    return amount.plus(tax);
  }
}

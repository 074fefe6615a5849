package io.github.brinewright.sale;

import io.github.brinewright.cost.LocalText;

/**
 * How a dealer sells at homes.
 *
 * @param atHome whether proposals are signed at the home, and not at the dealer's place
 * @param formsAttached the dealer's word that the forms of cancellation, both copies, are attached
 * @param statement the statement of the right to cancel in languages that the rule itself has no
 *     text for, as the dealer's counsel words it
 */
public record HomeSale(boolean atHome, boolean formsAttached, LocalText statement) {
  /** At the home, without a word on forms. */
  public static final HomeSale USUAL = new HomeSale(true, false, LocalText.NONE);
}

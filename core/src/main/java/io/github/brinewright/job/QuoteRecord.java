package io.github.brinewright.job;

import io.github.brinewright.quantity.Bounds;

/**
 * What a quote is known by, beside its date. Immutable.
 *
 * @param number as the dealer counts quotes; may be empty
 * @param revision 1 for the first quote of a home, one more for each that takes its place
 * @param rep who made it, as printed; may be empty
 * @param notes for the customer, as printed; may be empty
 */
public record QuoteRecord(String number, int revision, String rep, String notes) {
  /** Revisions that there may be. */
  public static final Bounds<Integer> REVISION = Bounds.of(1, 999);

  /** A first quote of which nothing else is said. */
  public static final QuoteRecord NONE = new QuoteRecord("", 1, "", "");

  /**
   * @param number as the dealer counts quotes; may be empty
   * @param revision 1 for the first quote of a home, one more for each that takes its place
   * @param rep who made it, as printed; may be empty
   * @param notes for the customer, as printed; may be empty
   * @throws IllegalArgumentException when the revision is not from 1 to 999
   */
  public QuoteRecord {
    REVISION.require("revision of a quote", revision);
  }

  /**
   * {@return the same quote as another revision}
   *
   * @param other 1 to 999
   * @throws IllegalArgumentException when it is not
   */
  public QuoteRecord withRevision(int other) {
    return new QuoteRecord(number, other, rep, notes);
  }

  /** {@return whether it takes the place of an earlier one} */
  public boolean isRevised() {
    return revision > 1;
  }
}

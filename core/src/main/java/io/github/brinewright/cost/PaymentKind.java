package io.github.brinewright.cost;

/** How something may be paid. */
public enum PaymentKind {
  /** A deposit with the signature, the balance after the installation. */
  CASH,
  /** A deposit, and the balance with interest month by month. */
  CREDIT,
  /** Month by month for a term, after which it is given back or bought. */
  RENTAL
}

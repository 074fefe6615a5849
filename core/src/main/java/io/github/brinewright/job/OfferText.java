package io.github.brinewright.job;

/** What a dealer says of every offer beside its price, in the order in which it is printed. */
public enum OfferText {
  /** What the price includes. */
  INCLUDED,
  /** What it does not include. */
  NOT_INCLUDED,
  /** What is warranted, by whom and for how long. */
  WARRANTY,
  /** How long it takes from the signature to the installation. */
  LEAD_TIME
}

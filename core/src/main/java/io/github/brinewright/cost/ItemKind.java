package io.github.brinewright.cost;

/** What a line of a quote beside the softener and its installation is, in the order of a bill. */
public enum ItemKind {
  /** Treatment of the water, ahead of the softener or behind it. */
  TREATMENT,
  /** What is added to the softener, such as a bypass or a leak alarm. */
  ACCESSORY,
  /** Work beyond the usual installation. */
  LABOUR,
  /** A permit or an inspection. */
  PERMIT,
  /** What is taken off where several items are bought together. */
  BUNDLE,
  /** What is taken off for equipment given in exchange. */
  TRADE_IN,
  /** What is taken off otherwise. */
  DISCOUNT;

  /** {@return whether its price is taken off the bill} */
  public boolean reduces() {
    return this == BUNDLE || this == TRADE_IN || this == DISCOUNT;
  }

  /** {@return whether it is goods, as sales tax tells them from work and fees} */
  public boolean goods() {
    return this == TREATMENT || this == ACCESSORY;
  }
}

package io.github.brinewright.sale;

/** Why a package is offered, in the order in which packages stand side by side. */
public enum PackageKind {
  /** What is recommended. */
  RECOMMENDED,
  /** What the customer asked for instead. */
  WISHED,
  /** What costs least over the years among all that keep every limit. */
  CHEAPEST,
  /** The best with the next larger bed. */
  BIGGER,
  /** The softener that is in the house, set right or under a meter. */
  KEEP
}

package io.github.brinewright.demand;

/** What a daily use was taken from. */
public enum UseBasis {
  /** People times an allowance per head. */
  PER_HEAD,
  /** The home's own bill. */
  BILL,
  /** A published relation between household size and indoor use. */
  STATISTICS,
  /** The statistical estimate would exceed the design use, so the design use stands for it. */
  DESIGN_USE
}

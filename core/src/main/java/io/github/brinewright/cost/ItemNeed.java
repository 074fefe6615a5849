package io.github.brinewright.cost;

/** When an item stands in a quote. */
public enum ItemNeed {
  /** In every quote. */
  INCLUDED,
  /** Where a finding or a reason of the verdict asks for it. */
  REQUIRED,
  /** Where the customer chooses it. */
  OFFERED
}

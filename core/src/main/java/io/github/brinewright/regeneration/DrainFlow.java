package io.github.brinewright.regeneration;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.softener.Softener;
import java.util.List;

/**
 * The flow that the drain lets through during the backwash: the smallest stocked size that lifts
 * the bed enough or, where none does, the largest; without stocked sizes exactly what the bed
 * needs.
 *
 * @param needed by the bed; more than zero
 * @param stocked sizes that the dealer keeps, each from 0.2 to 60 gpm; may be empty
 */
public record DrainFlow(FlowRate needed, List<FlowRate> stocked) {
  /**
   * Keeps its own sorted copy of {@code stocked}.
   *
   * @param needed by the bed
   * @param stocked sizes that the dealer keeps, each from 0.2 to 60 gpm
   * @throws IllegalArgumentException outside the ranges above
   */
  public DrainFlow {
    Require.positive("drain flow needed", needed);
    stocked.forEach(size -> Softener.DRAIN_FLOW.require("stocked drain flow", size));
    stocked = stocked.stream().sorted().toList();
  }

  /** {@return the size to fit} */
  public FlowRate chosen() {
    return stocked.stream()
        .filter(size -> size.compareTo(needed) >= 0)
        .findFirst()
        .orElse(stocked.isEmpty() ? needed : stocked.get(stocked.size() - 1));
  }

  /** {@return whether the chosen size lifts the bed as much as it needs} */
  public boolean enough() {
    return chosen().compareTo(needed) >= 0;
  }
}

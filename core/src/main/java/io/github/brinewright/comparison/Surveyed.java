package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A home as a price list's rules see it, worked out once for all its candidates: the verdict, what
 * was found, and which items stand in a quote for it.
 */
record Surveyed(HomeLoad home, Verdict verdict, List<Finding> findings, List<Item> items) {
  static Surveyed of(PriceList prices, HomeLoad home) {
    return new Surveyed(
        home,
        prices.rules().verdict(home),
        prices.rules().findings(home),
        prices.items().stream().filter(item -> !item.isExtra()).toList());
  }

  /** The items for a candidate of the home: those included, and those that a finding asks for. */
  List<Item> itemsWith(List<Finding> ofCandidate) {
    Set<String> codes = new HashSet<>();
    List.of(verdict.reasons(), findings, ofCandidate).stream()
        .flatMap(Collection::stream)
        .forEach(finding -> codes.add(finding.code()));
    return items.stream()
        .filter(item -> item.need() != ItemNeed.REQUIRED || item.requiredBy(codes))
        .filter(this::isUsed)
        .toList();
  }

  /** Of the treatments that the water is computed for, those alone. */
  private boolean isUsed(Item item) {
    return !item.changesWater()
        || home.site()
            .treated()
            .map(water -> !water.isComputed() || water.treatments().contains(item.id()))
            .orElse(true);
  }
}

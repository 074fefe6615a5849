package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which items of a price list stand in a quote for a home: those included, and those asked for. */
final class ItemChoice {
  private final List<Item> items;
  private final Set<String> asked = new HashSet<>();

  private ItemChoice(List<Item> items) {
    this.items = items;
  }

  /** For a home, whose findings are looked for only where an item may be asked for. */
  static ItemChoice of(PriceList prices, HomeLoad home) {
    ItemChoice choice =
        new ItemChoice(prices.items().stream().filter(item -> !item.isExtra()).toList());
    if (choice.items.stream().anyMatch(item -> item.need() == ItemNeed.REQUIRED)) {
      choice.ask(prices.rules().verdict(home).reasons());
      choice.ask(prices.rules().findings(home));
    }
    return choice;
  }

  private void ask(List<Finding> findings) {
    findings.forEach(finding -> asked.add(finding.code()));
  }

  /** Those for a candidate of the home. */
  List<Item> with(List<Finding> ofCandidate) {
    Set<String> codes = new HashSet<>(asked);
    ofCandidate.forEach(finding -> codes.add(finding.code()));
    return items.stream()
        .filter(item -> item.need() != ItemNeed.REQUIRED || item.requiredBy(codes))
        .toList();
  }
}

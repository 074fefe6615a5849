package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentTrain;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A home as a price list's rules see it, worked out once for all its candidates: the verdict, what
 * was found, which items stand in a quote for it, and the treatments among them that its water is
 * computed for.
 */
record Surveyed(
    HomeLoad home,
    Verdict verdict,
    List<Finding> findings,
    List<Item> items,
    Optional<TreatmentTrain> treatment) {
  static Surveyed of(PriceList prices, HomeLoad home) {
    List<Item> items = prices.items().stream().filter(item -> !item.isExtra()).toList();
    return new Surveyed(
        home,
        prices.rules().verdict(home),
        prices.rules().findings(home),
        items,
        home.site()
            .treated()
            .filter(TreatedWater::isComputed)
            .map(water -> items.stream().filter(item -> isIn(water, item)).toList())
            .map(used -> train(home, used)));
  }

  /** What the treatments among some items make of the raw water. */
  static TreatmentTrain train(HomeLoad home, List<Item> items) {
    Map<String, Treatment> treatments = new LinkedHashMap<>();
    items.forEach(item -> item.treatment().ifPresent(each -> treatments.put(item.id(), each)));
    return TreatmentTrain.of(home.site().water(), treatments);
  }

  private static boolean isIn(TreatedWater water, Item item) {
    return water.treatments().contains(item.id());
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
            .map(water -> !water.isComputed() || isIn(water, item))
            .orElse(true);
  }
}

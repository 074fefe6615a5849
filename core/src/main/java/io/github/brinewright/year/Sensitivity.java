package io.github.brinewright.year;

import io.github.brinewright.comparison.Comparer;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.sizing.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What would be recommended after one change.
 *
 * @param change what turned out otherwise
 * @param recommended the unit then; empty when none would keep every limit
 * @param holds whether it is the unit recommended now
 */
public record Sensitivity(Change change, Optional<String> recommended, boolean holds) {
  /** Tries each change on a comparison that recommends something. */
  static List<Sensitivity> of(Comparer comparer, Comparison comparison, Option chosen) {
    List<Sensitivity> all = new ArrayList<>();
    for (Change change : Change.values()) {
      change
          .site(comparison.home().site())
          .map(site -> after(change, site, comparer, comparison, chosen))
          .ifPresent(all::add);
    }
    return all;
  }

  private static Sensitivity after(
      Change change, Site site, Comparer comparer, Comparison comparison, Option chosen) {
    Optional<Option> then =
        comparer.compare(site, change.tariff(comparison.tariff())).recommended();
    boolean same = then.filter(o -> o.unit().id().equals(chosen.unit().id())).isPresent();
    return new Sensitivity(change, then.map(option -> option.unit().name()), same);
  }
}

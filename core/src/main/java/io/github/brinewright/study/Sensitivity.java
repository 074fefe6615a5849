package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.home.Site;
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
public record Sensitivity(WhatIf change, Optional<String> recommended, boolean holds) {
  /** Tries each change on a comparison that recommends something. */
  static List<Sensitivity> of(PriceList comparer, Comparison comparison, Candidate chosen) {
    List<Sensitivity> all = new ArrayList<>();
    for (WhatIf change : WhatIf.values()) {
      change
          .site(comparison.home().site())
          .map(site -> after(change, site, comparer, comparison, chosen))
          .ifPresent(all::add);
    }
    return all;
  }

  private static Sensitivity after(
      WhatIf change, Site site, PriceList comparer, Comparison comparison, Candidate chosen) {
    Optional<Candidate> then =
        comparer.compare(site, change.tariff(comparison.tariff())).recommended();
    boolean same = then.filter(o -> o.softener().id().equals(chosen.softener().id())).isPresent();
    return new Sensitivity(change, then.map(candidate -> candidate.softener().name()), same);
  }
}

package io.github.brinewright.published;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;

/** From how much of a substance on a rule speaks, found by trying. */
final class Threshold {
  private static final Household TWO = Household.of(2).build();

  private Threshold() {}

  /** In mg/L, to a millionth; the rule must speak at 1 mg/L and be silent at none. */
  static double of(HomeRule rule, Substance substance, Place place) {
    double silent = 0;
    double speaks = 1;
    while (speaks - silent > 1e-6) {
      double middle = (silent + speaks) / 2;
      if (rule.lookAt(home(substance, middle, place)).isPresent()) {
        speaks = middle;
      } else {
        silent = middle;
      }
    }
    return silent;
  }

  private static HomeLoad home(Substance substance, double milligrams, Place place) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18))
            .found(substance, Concentration.ofMilligramsPerLitre(milligrams))
            .build();
    return new HomeLoad(Site.of("h", water, TWO).place(place).build());
  }
}

package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.ReasonRule;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentTrain;
import java.util.List;

/**
 * The treatments of a price list that a home's water asks for. They are taken together or not at
 * all: where the water behind them would still be treated first, they answer nothing.
 */
final class Treating {
  private final PriceList prices;
  private final HomeLoad raw;

  Treating(PriceList prices, HomeLoad raw) {
    this.prices = prices;
    this.raw = raw;
  }

  /**
   * The home with the water behind these treatments. As it is where none is asked for or enough,
   * where a visit states the water after treatment, and where a softener runs on the raw water.
   */
  Site site() {
    Site site = raw.site();
    if (site.treated().isPresent()
        || site.present().isPresent()
        || prices.items().stream().noneMatch(Item::changesWater)) {
      return site;
    }
    List<Item> asked = Surveyed.of(prices, raw).itemsWith(List.of());
    TreatmentTrain train = Surveyed.train(raw, asked);
    boolean enough =
        !train.stages().isEmpty()
            && isFit(train.after())
            && train.stages().stream().allMatch(stage -> carries(stage.treatment()))
            && site.target().compareTo(train.after().hardness()) < 0;
    return enough ? site.withTreated(train.treated()) : site;
  }

  /** Whether nothing of a water is left that a treatment ahead of the softener would answer. */
  private boolean isFit(WaterAnalysis water) {
    Site site = raw.site();
    Verdict behind =
        prices.rules().verdict(new HomeLoad(Site.of(site.id(), water, site.household()).build()));
    return behind.reasons().stream()
        .map(reason -> (ReasonRule) reason.rule())
        .noneMatch(rule -> rule.kind() == VerdictKind.TREAT_FIRST && rule.answeredByTreatment());
  }

  /** Whether a treatment carries the peak flow of the home. */
  private boolean carries(Treatment treatment) {
    return treatment.serviceFlow().map(flow -> !raw.peakFlow().exceeds(flow)).orElse(true);
  }
}

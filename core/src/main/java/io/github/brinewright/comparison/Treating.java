package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.ReasonRule;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentTrain;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

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
    TreatmentTrain train = TreatmentTrain.of(site.water(), askedFor());
    boolean enough =
        !train.stages().isEmpty()
            && isFit(train.after())
            && train.stages().stream().allMatch(stage -> carries(stage.treatment()))
            && site.target().compareTo(train.after().hardness()) < 0;
    return enough ? site.withTreated(train.treated()) : site;
  }

  private Map<String, Treatment> askedFor() {
    Set<String> codes = new HashSet<>();
    Stream.concat(
            prices.rules().verdict(raw).reasons().stream(), prices.rules().findings(raw).stream())
        .map(Finding::code)
        .forEach(codes::add);
    Map<String, Treatment> treatments = new LinkedHashMap<>();
    prices.items().stream()
        .filter(item -> item.need() == ItemNeed.INCLUDED || item.requiredBy(codes))
        .forEach(item -> item.treatment().ifPresent(each -> treatments.put(item.id(), each)));
    return treatments;
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

package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What the sizes cost over the years, drawn beside the sliders.
 *
 * @param look how it is read
 * @param comparison of the home as it is tried
 * @param service of the softener in the house; null where there is none
 */
record BarsView(Look look, Comparison comparison, @Nullable ServiceStudy service) {
  private static final int SIZES = 4;

  Html html() {
    List<Candidate> sizes =
        comparison.columns(SIZES).stream().filter(each -> each.design().feasible()).toList();
    if (sizes.isEmpty() || !comparison.verdict().permitsRecommendation()) {
      return new Html().element("p", look.text("opening.none"), "class", "voice-quiet");
    }
    Phrase name = Phrase.text("page.bars", Phrase.of(Figure.of(sizes.get(0).life().years())));
    return new Html()
        .element("h3", name.in(look.words()))
        .add(look.pieces().all(List.of(chart(sizes, name))));
  }

  private Chart chart(List<Candidate> sizes, Phrase name) {
    List<Money> costs = new ArrayList<>(sizes.stream().map(each -> each.life().total()).toList());
    now().ifPresent(costs::add);
    double most = costs.stream().mapToDouble(BarsView::amount).max().orElse(1);
    List<Chart.Level> bars = new ArrayList<>();
    now()
        .ifPresent(
            cost ->
                bars.add(bar("now", Phrase.text("now.column"), cost, amount(cost) / most, false)));
    for (Candidate each : sizes) {
      Money cost = each.life().total();
      Phrase unit = Phrase.plain(each.softener().name());
      boolean chosen = comparison.recommends(each);
      bars.add(bar(each.softener().id(), unit, cost, amount(cost) / most, chosen));
    }
    return new Chart.Levels(name, bars);
  }

  /** What the softener in the house costs to run over the same years. */
  private Optional<Money> now() {
    int years = comparison.priceList().terms().years();
    return Optional.ofNullable(service).map(study -> study.runningAsFound().after(years));
  }

  private static Chart.Level bar(
      String key, Phrase name, Money cost, double share, boolean chosen) {
    return new Chart.Level(key, name, share, Phrase.of(Figure.about(cost)), chosen);
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }
}

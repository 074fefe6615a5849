package io.github.brinewright.internal.section;

import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** The water after a treatment ahead of the softener, as it is stated. */
final class TreatedAs {
  private TreatedAs() {}

  /** Its hardness and what else is stated; nothing where no treatment is. */
  static Phrase stated(Site site) {
    return site.treated().map(TreatedAs::stated).orElse(Phrase.NONE);
  }

  private static Phrase stated(TreatedWater water) {
    List<Phrase> all = new ArrayList<>();
    all.add(Phrase.text("treated.hardness", Phrase.of(Figure.of(water.hardness()))));
    water.iron().map(left -> Phrase.text("treated.iron", result(left, 2))).ifPresent(all::add);
    water
        .manganese()
        .map(left -> Phrase.text("treated.manganese", result(left, 2)))
        .ifPresent(all::add);
    water.ph().ifPresent(ph -> all.add(Phrase.text("treated.ph", Phrase.of(Figure.of(ph, 1)))));
    return new Phrase.Listed(all);
  }

  /** A result of a laboratory: an amount, below a limit, or not detected. */
  static Phrase result(LabResult result, int decimals) {
    Phrase amount = Phrase.of(Figure.of(result.atMost(), decimals));
    return switch (result.kind()) {
      case MEASURED -> amount;
      case BELOW_REPORTING_LIMIT -> Phrase.text("water.below", amount);
      case NOT_DETECTED -> Phrase.text("water.notDetected");
    };
  }
}

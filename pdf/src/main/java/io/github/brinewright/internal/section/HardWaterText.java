package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.trace.Figure;

/** Hard water of a year from all causes, in the words of every document. */
final class HardWaterText {
  private HardWaterText() {}

  /** The volume, and the days of mean use that it is. */
  static Phrase of(HardWater hard, HomeLoad home) {
    return Phrase.text(
        "compare.hardOf",
        Phrase.of(Figure.of(hard.total(), 0)),
        Phrase.of(Figure.days(hard.daysOf(home.softenedExpected()), 1)));
  }
}

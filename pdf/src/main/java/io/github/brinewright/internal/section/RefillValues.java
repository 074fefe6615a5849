package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.trace.Figure;
import java.util.LinkedHashMap;
import java.util.Map;

/** A refill as minutes, water and salt. */
final class RefillValues {
  private RefillValues() {}

  /** As the control is set, and the minutes that would be exact. */
  static Map<String, Phrase> of(BrineRefill refill) {
    Map<String, Phrase> values = new LinkedHashMap<>();
    values.put("settings.refillMinutes", Phrase.of(SetMinutes.figure(refill.set())));
    values.put("settings.refillExact", Phrase.of(Figure.of(refill.exact(), 2)));
    values.put("settings.refillWater", Phrase.of(Figure.of(refill.water(), 1)));
    values.put("settings.refillSalt", Phrase.of(Figure.of(refill.saltGiven())));
    return values;
  }
}

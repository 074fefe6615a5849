package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;

/** What a control is set to: worked out, or as it was found. */
interface ControlValues {
  /** What is set, but for a meter, in the order of a sheet; some of it only where it is known. */
  List<String> KEYS =
      List.of(
          "settings.kind",
          "settings.clock",
          "settings.hour",
          "settings.days",
          "settings.weekdays",
          "settings.gap",
          "settings.longest",
          "settings.first",
          "settings.firstLatest",
          "settings.refillMinutes",
          "settings.refillExact",
          "settings.refillWater",
          "settings.refillSalt");

  /** Where a control takes no such setting, or a bed cannot serve the home. */
  Phrase NONE = Phrase.plain("–");

  /** What starts a regeneration. */
  Control control();

  /** The softener. */
  Softener softener();

  /** The steps of a regeneration. */
  Cycle cycle();

  /** The refill. */
  BrineRefill refill();

  /** The time of day at which it begins, where it waits for one. */
  LocalTime begins();

  /** Days for which a bed may stand without a regeneration. */
  Figure standing();

  /** What is set, by the keys above: those that this control takes. */
  Map<String, Phrase> values();

  /** What is set at a meter; none for a clock. */
  List<MeterColumn> meter();

  /** Whether it regenerates at a time of day. */
  default boolean waits() {
    return control() != Control.METERED_AT_ONCE;
  }
}

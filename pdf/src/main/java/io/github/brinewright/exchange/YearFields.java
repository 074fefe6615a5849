package io.github.brinewright.exchange;

import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import java.util.LinkedHashMap;
import java.util.Map;

/** The fields of a simulated year. */
final class YearFields {
  private YearFields() {}

  static Map<String, Object> of(SimulatedYears outcome) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("regenerations", spread(outcome.regenerations()));
    fields.put("saltLb", spread(outcome.saltPounds()));
    fields.put("waterGal", spread(outcome.waterGallons()));
    fields.put("hardWaterDays", spread(outcome.hardDays()));
    fields.put("hardWaterGal", spread(outcome.hardGallons()));
    fields.put("hardWaterDuringRegenerationGal", spread(outcome.cycleGallons()));
    fields.put("longestIntervalDays", spread(outcome.longestGap()));
    fields.put("unusedCapacityShare", Numbers.of(outcome.unusedShare()));
    fields.put("runOutShare", Numbers.of(outcome.runOutShare()));
    return fields;
  }

  private static Map<String, Object> spread(Spread spread) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("mean", Numbers.of(spread.mean()));
    fields.put("low5Percent", Numbers.of(spread.low()));
    fields.put("high95Percent", Numbers.of(spread.high()));
    return fields;
  }
}

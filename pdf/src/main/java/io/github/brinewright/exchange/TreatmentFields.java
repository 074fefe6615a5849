package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.treatment.TreatmentStage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The treatments ahead of the softener that are sold with it, with the water after each. */
final class TreatmentFields {
  private TreatmentFields() {}

  static List<Map<String, @Nullable Object>> of(Comparison comparison) {
    return comparison
        .treatment()
        .map(train -> train.stages().stream().map(TreatmentFields::stage).toList())
        .orElse(List.of());
  }

  private static Map<String, @Nullable Object> stage(TreatmentStage stage) {
    WaterAnalysis after = stage.after();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("itemId", stage.id());
    fields.put("position", CandidateFields.name(stage.treatment().position()));
    fields.put("hardnessAfterGpg", Numbers.of(after.hardness().grainsPerGallon()));
    fields.put("ironAfterMgPerL", found(after, Substance.IRON));
    fields.put("manganeseAfterMgPerL", found(after, Substance.MANGANESE));
    fields.put("hydrogenSulfideAfterMgPerL", found(after, Substance.HYDROGEN_SULFIDE));
    fields.put("phAfter", after.ph().isPresent() ? Numbers.of(after.ph().getAsDouble()) : null);
    fields.put("pressureLossPsi", Numbers.of(stage.treatment().pressureLoss().psi()));
    fields.put("backwashGalPerYear", Numbers.of(stage.treatment().drainOfYear().gallons()));
    return fields;
  }

  private static @Nullable Object found(WaterAnalysis water, Substance substance) {
    return water
        .found(substance)
        .map(Concentration::milligramsPerLitre)
        .map(Numbers::of)
        .orElse(null);
  }
}

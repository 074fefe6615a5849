package io.github.brinewright.job;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.treatment.Neutralizer;
import io.github.brinewright.treatment.NeutralizerMineral;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What a row of items.csv says of the effect of a treatment, until that can be built from it. */
final class TreatmentDraft {
  @Nullable TreatmentPosition position;
  @Nullable NeutralizerMineral mineral;
  @Nullable Double phAfter;
  @Nullable Volume backwash;
  @Nullable Integer backwashDays;
  private final List<Consumer<Treatment.Builder>> settings = new ArrayList<>();

  void set(Consumer<Treatment.Builder> setting) {
    settings.add(setting);
  }

  /** The treatment; null where no position is stated. */
  @Nullable Treatment build() {
    if (position == null) {
      return null;
    }
    Treatment.Builder treatment = Treatment.at(position);
    settings.forEach(setting -> setting.accept(treatment));
    if (mineral != null && phAfter != null) {
      treatment.neutralizer(new Neutralizer(mineral, phAfter));
    }
    if (backwash != null && backwashDays != null) {
      treatment.backwash(backwash, backwashDays);
    }
    return treatment.build();
  }
}

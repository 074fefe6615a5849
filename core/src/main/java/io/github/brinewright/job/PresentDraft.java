package io.github.brinewright.job;

import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What a row of sites.csv says of the softener in the house, until it can be built. */
final class PresentDraft {
  /** Whether any of its cells is filled. */
  boolean found;

  @Nullable Control control;
  @Nullable Integer days;
  Set<DayOfWeek> weekdays = Set.of();
  @Nullable Volume setVolume;
  @Nullable Hardness setHardness;
  @Nullable HardnessAmount setCapacity;
  @Nullable Volume reserve;
  @Nullable Length vesselDiameter;
  @Nullable Length vesselHeight;
  String resinId = "";
  @Nullable Resin resin;
  @Nullable SaltDosage dosage;
  @Nullable Mass salt;
  @Nullable Duration refill;
  @Nullable FlowRate refillFlow;
  List<MeterReading> readings = List.of();
  ReadMeter readMeter = ReadMeter.SOFTENER;

  private final List<Consumer<PresentSoftener.Builder>> settings = new ArrayList<>();

  /** Says something of the softener; it is asked once its control is known. */
  void softener(Consumer<PresentSoftener.Builder> setting) {
    settings.add(setting);
  }

  /** What the meter lets pass between two regenerations by its own settings, where they say so. */
  Optional<Volume> setToPass() {
    return setHardness == null || setCapacity == null
        ? Optional.ofNullable(setVolume)
        : Optional.of(setCapacity.asWaterOf(setHardness));
  }

  PresentSoftener build() {
    PresentSoftener.Builder softener = PresentSoftener.of(builtControl());
    settings.forEach(setting -> setting.accept(softener));
    if (vesselDiameter != null && vesselHeight != null) {
      softener.vessel(new Vessel(vesselDiameter, vesselHeight));
    }
    if (resin != null) {
      softener.resin(resin);
    }
    builtSalt().ifPresent(softener::salt);
    if (!readings.isEmpty()) {
      softener.readings(readMeter, readings);
    }
    return softener.build();
  }

  private PresentControl builtControl() {
    return switch (Objects.requireNonNull(control)) {
      case CLOCK -> PresentControl.clock(Objects.requireNonNull(days));
      case WEEKDAYS -> PresentControl.weekdays(weekdays);
      case METERED_AT_ONCE -> meter(true);
      case METERED_AT_NIGHT -> meter(false);
    };
  }

  private PresentControl meter(boolean atOnce) {
    Optional<Volume> held = Optional.ofNullable(reserve);
    Optional<Integer> longest = Optional.ofNullable(days);
    return setVolume == null
        ? new PresentControl.ByHardness(
            Objects.requireNonNull(setHardness),
            Optional.ofNullable(setCapacity),
            atOnce,
            held,
            longest)
        : new PresentControl.ByVolume(setVolume, atOnce, held, longest);
  }

  private Optional<PresentSalt> builtSalt() {
    if (dosage != null) {
      return Optional.of(new PresentSalt.Dosed(dosage));
    }
    if (salt != null) {
      return Optional.of(new PresentSalt.EachTime(salt));
    }
    return Optional.ofNullable(refill)
        .map(time -> new PresentSalt.Refill(time, Optional.ofNullable(refillFlow)));
  }
}

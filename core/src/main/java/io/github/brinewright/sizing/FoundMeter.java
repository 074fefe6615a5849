package io.github.brinewright.sizing;

import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The volume after which a present meter starts a regeneration: as set, or capacity ÷ hardness as
 * set, less what the control holds back besides. Source: quotient of the figures named.
 */
final class FoundMeter {
  private static final Volume NOTHING = Volume.ofGallons(0);

  private final Volume set;
  private final Volume reserve;
  private final Optional<HardnessAmount> assumed;

  /**
   * @param usual the capacity that it is taken to be told with a hardness where nobody read it
   */
  FoundMeter(Metered meter, Function<Hardness, HardnessAmount> usual) {
    assumed =
        meter instanceof ByHardness told && told.capacity().isEmpty()
            ? Optional.of(usual.apply(told.hardness()))
            : Optional.empty();
    set = set(meter);
    reserve = meter.reserve().orElse(NOTHING);
  }

  private Volume set(Metered meter) {
    if (meter instanceof ByVolume byVolume) {
      return byVolume.set();
    }
    ByHardness told = (ByHardness) meter;
    return told.capacity().or(() -> assumed).orElseThrow().asWaterOf(told.hardness());
  }

  /** The volume that the control shows or would show, before its own reserve. */
  Volume set() {
    return set;
  }

  /** What starts a regeneration. */
  Volume starts() {
    return set.minus(reserve).max(NOTHING);
  }

  List<Assumption> assumptions() {
    return assumed
        .map(capacity -> Assumption.of(AssumptionKind.METER_CAPACITY, Figure.of(capacity)))
        .stream()
        .toList();
  }
}

package io.github.brinewright.sizing;

import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;

/**
 * The volume after which a present meter starts a regeneration: as set, or capacity ÷ hardness as
 * set, less what the control holds back besides. Source: quotient of the figures named.
 */
final class FoundMeter {
  private static final Volume NOTHING = Volume.ofGallons(0);

  private final Volume set;
  private final Volume reserve;
  private final Optional<HardnessAmount> assumed;

  FoundMeter(Metered meter, PresentSoftener present, Volume bed) {
    boolean capacityUnknown = meter instanceof ByHardness told && told.capacity().isEmpty();
    assumed = capacityUnknown ? Optional.of(usual(present, bed)) : Optional.empty();
    set = set(meter);
    reserve = meter.reserve().orElse(NOTHING);
  }

  /** What a rating, or a bed of that volume, is usually reckoned with. */
  private static HardnessAmount usual(PresentSoftener present, Volume bed) {
    HardnessAmount rated = present.rated().orElseGet(() -> RatedCapacityBasis.usualRating(bed));
    return new RatedCapacityBasis(rated, bed, Regenerant.SODIUM_CHLORIDE).usable();
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

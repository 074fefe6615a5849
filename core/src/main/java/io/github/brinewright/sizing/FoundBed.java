package io.github.brinewright.sizing;

import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** The bed of a present softener: its volume, vessel and resin, known or assumed. */
final class FoundBed {
  private final PresentSoftener present;
  private final List<Assumption> assumptions = new ArrayList<>();
  private final Volume volume;
  private final Vessel vessel;
  private final Resin resin;

  FoundBed(PresentSoftener present) {
    this.present = present;
    volume = present.resinVolume().orElseGet(this::assumedVolume);
    vessel = present.vessel().orElseGet(() -> Vessel.usualFor(volume));
    resin = present.resin().orElseGet(this::assumedResin);
  }

  private Volume assumedVolume() {
    return present.rated().map(this::ofRating).orElseGet(this::ofVessel);
  }

  private Volume ofRating(HardnessAmount rated) {
    Volume usual = RatedCapacityBasis.usualVolume(rated);
    assume(AssumptionKind.BED_FROM_RATING, Figure.of(rated), Figure.bed(usual));
    return usual;
  }

  private Volume ofVessel() {
    Vessel measured = present.vessel().orElseThrow();
    Volume usual = measured.usualBed();
    assume(
        AssumptionKind.BED_FROM_VESSEL,
        Figure.of(measured.diameter()),
        Figure.of(measured.height()),
        Figure.bed(usual));
    return usual;
  }

  private Resin assumedResin() {
    assume(AssumptionKind.RESIN_STANDARD);
    return ShippedResins.STANDARD_GEL;
  }

  private void assume(AssumptionKind kind, Figure... figures) {
    assumptions.add(Assumption.of(kind, figures));
  }

  Volume volume() {
    return volume;
  }

  Vessel vessel() {
    return vessel;
  }

  Resin resin() {
    return resin;
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }
}

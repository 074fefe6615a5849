package io.github.brinewright.sizing;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.DosageCurveBasis;

/**
 * What a bed of some age holds: design factor × share left at its age × curve(salt ÷ volume) ×
 * volume × share left in cold water.
 */
final class FoundCapacity {
  private final FoundBed bed;
  private final int years;
  private final double shareInColdWater;

  /**
   * @param years of age; 0 where it is not known
   */
  FoundCapacity(FoundBed bed, int years, double shareInColdWater) {
    this.bed = bed;
    this.years = years;
    this.shareInColdWater = shareInColdWater;
  }

  CapacityCurve curve() {
    return bed.resin().curve();
  }

  SaltDosage nearest(SaltDosage dosage) {
    return curve().dosages().nearest(dosage);
  }

  double designFactor(double lossAYear) {
    return DosageCurveBasis.USUAL_DESIGN_FACTOR * AgeLoss.left(years, lossAYear);
  }

  /**
   * Salt above the curve gives what its upper end gives. Of less salt than its lower end it is
   * known that it gives more than in proportion, since each pound more gives less than the one
   * before; less than that end; and no more than chemistry allows.
   *
   * @param given salt, maybe outside the curve
   * @param draw of age, and of the place between those ends
   */
  HardnessAmount usable(SaltDosage given, FoundUnknowns draw) {
    return perVolume(given, draw.salt())
        .of(bed.volume())
        .times(designFactor(draw.lossAYear()) * shareInColdWater);
  }

  private ResinCapacity perVolume(SaltDosage given, double place) {
    SaltDosage onCurve = nearest(given);
    ResinCapacity atEnd = curve().at(onCurve);
    if (given.compareTo(onCurve) >= 0) {
      return atEnd;
    }
    ResinCapacity least = atEnd.times(given.ratioTo(onCurve));
    ResinCapacity most = atEnd.min(limit(given));
    return least.plus(most.minus(least).times(place));
  }

  private static ResinCapacity limit(SaltDosage given) {
    return ResinCapacity.ofGrainsPerCubicFoot(
        CapacityCurve.CHEMICAL_LIMIT.grainsPerPound() * given.poundsPerCubicFoot());
  }
}

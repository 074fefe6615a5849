package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;

/**
 * Capacity = slope × ln(dosage) + offset, in grains/ft3 for a dosage in lb/ft3.
 *
 * @param slope grains/ft3 for each unit of the logarithm; 1,000 to 60,000 grains/ft3
 * @param offset grains/ft3 at 1 lb/ft3; so that efficiency falls and stays below the chemical limit
 * @param lowest the lowest dosage the fit was made for; 1 to 30 lb/ft3
 * @param highest the highest dosage the fit was made for; {@code lowest} to 30 lb/ft3
 * @param source who states the fit
 * @param basis what its capacities are stated on
 */
public record LogarithmicCurve(
    ResinCapacity slope,
    ResinCapacity offset,
    SaltDosage lowest,
    SaltDosage highest,
    Source source,
    CurveBasis basis)
    implements CapacityCurve {
  /**
   * A fit that is a basis of its own.
   *
   * @param slope grains/ft3 for each unit of the logarithm
   * @param offset grains/ft3 at 1 lb/ft3
   * @param lowest the lowest dosage the fit was made for
   * @param highest the highest dosage the fit was made for
   * @param source who states the fit
   * @throws IllegalArgumentException as the other constructor
   */
  public LogarithmicCurve(
      ResinCapacity slope,
      ResinCapacity offset,
      SaltDosage lowest,
      SaltDosage highest,
      Source source) {
    this(slope, offset, lowest, highest, source, new CurveBasis(source));
  }

  /**
   * @param slope grains/ft3 for each unit of the logarithm
   * @param offset grains/ft3 at 1 lb/ft3
   * @param lowest the lowest dosage the fit was made for
   * @param highest the highest dosage the fit was made for
   * @param source who states the fit
   * @param basis what its capacities are stated on
   * @throws IllegalArgumentException when a dosage is out of range, when efficiency would not fall
   *     over the range, or when it would exceed the chemical limit at its lower end
   */
  public LogarithmicCurve {
    DOSAGE.require("lowest dosage", lowest);
    Bounds.of(lowest, DOSAGE.high()).require("highest dosage", highest);
    CAPACITY.require("slope", slope);
    double shape = offset.ratioTo(slope) + Math.log(lowest.poundsPerCubicFoot());
    if (shape < 1) {
      throw new IllegalArgumentException(
          "salt efficiency must fall with dosage over the range, but with an offset of "
              + offset
              + " it rises at "
              + lowest);
    }
    ResinCapacity first = capacity(slope, lowest, offset);
    if (first.at(lowest).exceeds(CHEMICAL_LIMIT)) {
      throw new IllegalArgumentException(
          "at " + lowest + " the efficiency is above the chemical limit " + CHEMICAL_LIMIT);
    }
    CAPACITY.require("capacity at the highest dosage", capacity(slope, highest, offset));
  }

  /**
   * The same basis for another resin, over a part of the range.
   *
   * @param ratio of its capacity to this one's, like for like; more than zero, dimensionless
   * @param from the lowest dosage; within this range
   * @param to the highest dosage; within this range
   * @param statedBy who states the ratio
   */
  LogarithmicCurve likeForLike(double ratio, double from, double to, Source statedBy) {
    return new LogarithmicCurve(
        slope.times(ratio),
        offset.times(ratio),
        requireCovered(SaltDosage.ofPoundsPerCubicFoot(from)),
        requireCovered(SaltDosage.ofPoundsPerCubicFoot(to)),
        statedBy,
        basis);
  }

  private static ResinCapacity capacity(
      ResinCapacity slope, SaltDosage dosage, ResinCapacity offset) {
    return slope.times(Math.log(dosage.poundsPerCubicFoot())).plus(offset);
  }

  @Override
  public Worked<ResinCapacity> worked(SaltDosage dosage) {
    return Worked.of(
        StepKind.CAPACITY_LOGARITHM,
        source,
        slope,
        requireCovered(dosage),
        offset,
        LogarithmicCurve::capacity);
  }
}

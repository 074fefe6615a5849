package io.github.brinewright.softener;

import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * Capacity = slope × ln(dosage) + offset, in grains/ft3 for a dosage in lb/ft3.
 *
 * @param slope grains/ft3 for each unit of the logarithm
 * @param offset grains/ft3 at 1 lb/ft3
 * @param lowest the lowest dosage the fit was made for
 * @param highest the highest dosage the fit was made for
 * @param source who states the fit
 */
public record LogarithmicCurve(
    ResinCapacity slope, ResinCapacity offset, SaltDosage lowest, SaltDosage highest, Source source)
    implements CapacityCurve {
  /**
   * @throws IllegalArgumentException when efficiency would not fall over the range or would exceed
   *     the chemical limit at its lower end
   */
  public LogarithmicCurve {
    double shape = offset.ratioTo(slope) + Math.log(lowest.poundsPerCubicFoot());
    if (!(slope.isPositive() && shape >= 1)) {
      throw new IllegalArgumentException("salt efficiency must fall with dosage over the range");
    }
    ResinCapacity first = slope.times(Math.log(lowest.poundsPerCubicFoot())).plus(offset);
    if (first.at(lowest).exceeds(CHEMICAL_LIMIT)) {
      throw new IllegalArgumentException("the curve exceeds the chemical limit at " + lowest);
    }
  }

  @Override
  public ResinCapacity at(SaltDosage dosage) {
    double pounds = requireCovered(dosage).poundsPerCubicFoot();
    return slope.times(Math.log(pounds)).plus(offset);
  }

  @Override
  public Step step(SaltDosage dosage) {
    return new Step(
        StepKind.CAPACITY_LOGARITHM,
        List.of(Figure.of(slope), Figure.of(dosage), Figure.of(offset, 1)),
        Figure.of(at(dosage)),
        source);
  }
}

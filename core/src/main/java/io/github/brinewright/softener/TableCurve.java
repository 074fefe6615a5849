package io.github.brinewright.softener;

import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A table of capacity against dosage, joined by straight lines. Between the points of a curve that
 * flattens, a straight line lies on the safe side. It never extrapolates.
 */
public final class TableCurve implements CapacityCurve {
  /**
   * One row of the table.
   *
   * @param dosage more than zero
   * @param capacity more than zero
   */
  public record Point(SaltDosage dosage, ResinCapacity capacity) {
    SaltEfficiency efficiency() {
      return capacity.at(dosage);
    }
  }

  private final List<Point> points;
  private final PolynomialSplineFunction lines;
  private final Source source;

  /**
   * @param points at least two, by rising dosage
   * @param source who states the table
   * @throws IllegalArgumentException when dosage or capacity does not rise, efficiency does not
   *     fall, or a point exceeds the chemical limit of 5,994 grains a pound
   */
  public TableCurve(List<Point> points, Source source) {
    this.points = List.copyOf(points);
    this.source = source;
    check();
    lines =
        new LinearInterpolator()
            .interpolate(
                points.stream().mapToDouble(p -> p.dosage().poundsPerCubicFoot()).toArray(),
                points.stream().mapToDouble(p -> p.capacity().grainsPerCubicFoot()).toArray());
  }

  /** The rows of the table, by rising dosage. */
  public List<Point> points() {
    return points;
  }

  /** Who states the table. */
  public Source source() {
    return source;
  }

  private void check() {
    if (points.size() < 2) {
      throw new IllegalArgumentException("a resin table needs at least two dosages");
    }
    Point first = points.get(0);
    if (!first.dosage().isPositive() || first.efficiency().exceeds(CHEMICAL_LIMIT)) {
      throw new IllegalArgumentException(
          "at " + first.dosage() + " the capacity is above the chemical limit " + CHEMICAL_LIMIT);
    }
    for (int i = 1; i < points.size(); i++) {
      checkPair(points.get(i - 1), points.get(i));
    }
  }

  private static void checkPair(Point low, Point high) {
    if (!high.dosage().exceeds(low.dosage()) || !high.capacity().exceeds(low.capacity())) {
      throw new IllegalArgumentException(
          "dosage and capacity must rise from row to row, but " + high + " does not follow " + low);
    }
    if (high.efficiency().exceeds(low.efficiency())) {
      throw new IllegalArgumentException(
          "salt efficiency must fall as dosage rises, but rises at " + high.dosage());
    }
  }

  @Override
  public SaltDosage lowest() {
    return points.get(0).dosage();
  }

  @Override
  public SaltDosage highest() {
    return points.get(points.size() - 1).dosage();
  }

  @Override
  public ResinCapacity at(SaltDosage dosage) {
    return ResinCapacity.ofGrainsPerCubicFoot(
        lines.value(requireCovered(dosage).poundsPerCubicFoot()));
  }

  @Override
  public Step step(SaltDosage dosage) {
    requireCovered(dosage);
    int upper = 1;
    while (dosage.exceeds(points.get(upper).dosage())) {
      upper++;
    }
    Point low = points.get(upper - 1);
    Point high = points.get(upper);
    return new Step(
        StepKind.CAPACITY_TABLE,
        List.of(
            Figure.of(low.capacity()),
            Figure.of(high.capacity()),
            Figure.of(dosage),
            Figure.of(low.dosage()),
            Figure.of(high.dosage())),
        Figure.of(at(dosage)),
        source);
  }
}

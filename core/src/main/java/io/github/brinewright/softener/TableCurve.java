package io.github.brinewright.softener;

import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Parts;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A table of capacity against dosage, joined by straight lines. Between the points of a curve that
 * flattens, a straight line lies on the safe side. It never extrapolates.
 */
public final class TableCurve implements CapacityCurve {
  /**
   * One row of the table.
   *
   * @param dosage 1 to 30 lb/ft3
   * @param capacity 1,000 to 60,000 grains/ft3
   */
  public record Point(SaltDosage dosage, ResinCapacity capacity) implements Parts {
    /**
     * @param dosage 1 to 30 lb/ft3
     * @param capacity 1,000 to 60,000 grains/ft3
     * @throws IllegalArgumentException outside the ranges above
     */
    public Point {
      DOSAGE.require("dosage", dosage);
      CAPACITY.require("capacity", capacity);
    }

    @Override
    public List<Figure> figures() {
      return List.of(Figure.of(capacity), Figure.of(dosage));
    }

    SaltEfficiency efficiency() {
      return capacity.at(dosage);
    }
  }

  private final List<Point> points;
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
  }

  /** {@return the rows of the table, by rising dosage} */
  public List<Point> points() {
    return points;
  }

  /** {@return who states the table} */
  public Source source() {
    return source;
  }

  @Override
  public CurveBasis basis() {
    return new CurveBasis(source);
  }

  private void check() {
    if (points.size() < 2) {
      throw new IllegalArgumentException("a resin table needs at least two dosages");
    }
    Point first = points.get(0);
    if (first.efficiency().exceeds(CHEMICAL_LIMIT)) {
      throw new IllegalArgumentException(
          "at " + first.dosage() + " the efficiency is above the chemical limit " + CHEMICAL_LIMIT);
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
  public Worked<ResinCapacity> worked(SaltDosage dosage) {
    requireCovered(dosage);
    int upper = 1;
    while (dosage.exceeds(points.get(upper).dosage())) {
      upper++;
    }
    return Worked.of(
        StepKind.CAPACITY_TABLE,
        source,
        points.get(upper - 1),
        points.get(upper),
        dosage,
        TableCurve::between);
  }

  /** In proportion between two rows of the table. */
  private static ResinCapacity between(Point low, Point high, SaltDosage dosage) {
    double slope =
        (high.capacity().grainsPerCubicFoot() - low.capacity().grainsPerCubicFoot())
            / (high.dosage().poundsPerCubicFoot() - low.dosage().poundsPerCubicFoot());
    double beyond = dosage.poundsPerCubicFoot() - low.dosage().poundsPerCubicFoot();
    return ResinCapacity.ofGrainsPerCubicFoot(low.capacity().grainsPerCubicFoot() + slope * beyond);
  }

  /** Tables of the same rows from the same source are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TableCurve that
        && points.equals(that.points)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(points, source);
  }

  @Override
  public String toString() {
    return "table " + points + " of " + source.id();
  }
}

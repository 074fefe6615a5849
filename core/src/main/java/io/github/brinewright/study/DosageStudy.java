package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.DosageCurveBasis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.joda.money.Money;

/**
 * Cost over the years against salt dosage, for one bed and control.
 *
 * @param curve points over the whole table, by rising dosage; only those that keep every limit
 * @param best the cheapest dosage of all, not only of those in stock
 * @param stocked the dosages in stock that keep every limit
 */
public record DosageStudy(List<Point> curve, Point best, List<Point> stocked) {
  private static final int CELLS = 48;
  private static final double FLAT = 1.02;

  /**
   * One dosage.
   *
   * @param dosage lb of sodium chloride for each cubic foot
   * @param cost over the years compared
   */
  public record Point(SaltDosage dosage, Money cost) {
    private double amount() {
      return cost.getAmount().doubleValue();
    }
  }

  /** Keeps its own copies of the lists. */
  public DosageStudy {
    curve = List.copyOf(curve);
    stocked = List.copyOf(stocked);
  }

  /** The lowest and the highest dosage whose cost is within 2 % of the best. */
  public List<SaltDosage> flat() {
    List<SaltDosage> within =
        curve.stream()
            .filter(point -> point.amount() <= FLAT * best.amount())
            .map(Point::dosage)
            .toList();
    return List.of(
        within.get(0).min(best.dosage()), within.get(within.size() - 1).max(best.dosage()));
  }

  /** The cheapest dosage in stock. */
  public Optional<Point> bestStocked() {
    return stocked.stream().min(Comparator.comparing(Point::cost));
  }

  /** Studies the bed of a candidate; empty when it is sized by a rating or nothing is feasible. */
  public static Optional<DosageStudy> of(
      PriceList comparer, Comparison comparison, Candidate candidate) {
    return candidate.design().basis() instanceof DosageCurveBasis basis
        ? new Search(comparer, comparer.sizer(comparison.home()), comparison, candidate, basis)
            .study()
        : Optional.empty();
  }

  /** Tries dosages on one bed and control. */
  private record Search(
      PriceList comparer,
      Sizer sizer,
      Comparison comparison,
      Candidate candidate,
      DosageCurveBasis basis) {
    Optional<DosageStudy> study() {
      CapacityCurve table = basis.resinType().curve();
      double low = table.lowest().poundsPerCubicFoot();
      double cell = (table.highest().poundsPerCubicFoot() - low) / CELLS;
      List<Point> curve = new ArrayList<>();
      for (int i = 0; i <= CELLS; i++) {
        point(Math.min(low + i * cell, table.highest().poundsPerCubicFoot())).ifPresent(curve::add);
      }
      return curve.stream()
          .min(Comparator.comparing(Point::cost))
          .map(coarse -> new DosageStudy(curve, refined(coarse, cell, table), stocked()));
    }

    private Point refined(Point coarse, double cell, CapacityCurve table) {
      double middle = coarse.dosage().poundsPerCubicFoot();
      double from = Math.max(table.lowest().poundsPerCubicFoot(), middle - cell);
      double to = Math.min(table.highest().poundsPerCubicFoot(), middle + cell);
      double found =
          new BrentOptimizer(1e-6, 1e-4)
              .optimize(
                  new MaxEval(200),
                  GoalType.MINIMIZE,
                  new SearchInterval(from, to, middle),
                  new UnivariateObjectiveFunction(this::costOrInfinite))
              .getPoint();
      return point(found).filter(fine -> fine.cost().isLessThan(coarse.cost())).orElse(coarse);
    }

    private double costOrInfinite(double pounds) {
      return point(pounds).map(Point::amount).orElse(Double.MAX_VALUE);
    }

    private List<Point> stocked() {
      return candidate.softener().bases().stream()
          .filter(DosageCurveBasis.class::isInstance)
          .map(stocked -> ((DosageCurveBasis) stocked).dosage().poundsPerCubicFoot())
          .flatMap(pounds -> point(pounds).stream())
          .toList();
    }

    private Optional<Point> point(double pounds) {
      SaltDosage dosage = SaltDosage.ofPoundsPerCubicFoot(pounds);
      DosageCurveBasis other =
          new DosageCurveBasis(
              basis.resinType(), basis.resin(), dosage, basis.designFactor(), basis.regenerant());
      Setup setup = new Setup(candidate.softener(), other, candidate.setup().control());
      Candidate tried =
          comparer.appraise(sizer.design(setup), candidate.offer(), comparison.tariff());
      return tried.feasible()
          ? Optional.of(new Point(dosage, tried.life().total()))
          : Optional.empty();
    }
  }
}

package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.study.DosageStudy.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Tries dosages on one bed and control. */
final class DosageSearch {
  private static final int CELLS = 48;

  private final Comparison comparison;
  private final Candidate candidate;
  private final DosageCurveBasis basis;
  private final Sizer sizer;
  private final double lowest;
  private final double highest;
  private final double cell;

  private DosageSearch(Comparison comparison, Candidate candidate, DosageCurveBasis basis) {
    this.comparison = comparison;
    this.candidate = candidate;
    this.basis = basis;
    sizer = comparison.priceList().sizer(comparison.home());
    CapacityCurve table = basis.resinType().curve();
    lowest = table.lowest().poundsPerCubicFoot();
    highest = table.highest().poundsPerCubicFoot();
    cell = (highest - lowest) / CELLS;
  }

  /** A search on the bed of a candidate; empty when it is sized by a rating. */
  static Optional<DosageSearch> of(Comparison comparison, Candidate candidate) {
    return candidate.setup().basis() instanceof DosageCurveBasis basis
        ? Optional.of(new DosageSearch(comparison, candidate, basis))
        : Optional.empty();
  }

  Optional<DosageStudy> study() {
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i <= CELLS; i++) {
      point(Math.min(lowest + i * cell, highest)).ifPresent(curve::add);
    }
    List<Point> stocked = stocked();
    return Stream.concat(curve.stream(), stocked.stream())
        .min(Comparator.comparing(Point::cost))
        .map(coarse -> new DosageStudy(curve, refined(coarse), stocked));
  }

  private Point refined(Point coarse) {
    double middle = coarse.dosage().poundsPerCubicFoot();
    double from = Math.max(lowest, middle - cell);
    double to = Math.min(highest, middle + cell);
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

  /** Whether a candidate breaks no margin that another one keeps or nearly keeps. */
  private static boolean keepsTheMarginsOf(Candidate other, Candidate tried) {
    return tried.marginsBroken().stream()
        .allMatch(check -> other.margin(check.margin()).filter(MarginCheck::broken).isPresent());
  }

  private Optional<Point> point(double pounds) {
    SaltDosage dosage = SaltDosage.ofPoundsPerCubicFoot(pounds);
    DosageCurveBasis other =
        new DosageCurveBasis(
            basis.resinType(), basis.resin(), dosage, basis.designFactor(), basis.regenerant());
    Setup setup = new Setup(candidate.softener(), other, candidate.setup().control());
    Candidate tried = comparison.appraise(sizer.design(setup));
    return tried.feasible() && keepsTheMarginsOf(candidate, tried)
        ? Optional.of(new Point(dosage, tried.life().total()))
        : Optional.empty();
  }
}

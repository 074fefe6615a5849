package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.SaltDosage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Cost over the years against salt dosage, for one bed and control. Immutable; equal when every
 * point is.
 *
 * <pre>{@code
 * DosageStudy.of(comparison, candidate)
 *     .ifPresent(study -> show(study.best().dosage(), study.flat()));
 * }</pre>
 */
public final class DosageStudy {
  private static final double FLAT = 1.02;

  private final List<Point> curve;
  private final Point best;
  private final List<Point> stocked;

  /**
   * One dosage.
   *
   * @param dosage of sodium chloride
   * @param cost over the years compared
   */
  public record Point(SaltDosage dosage, Money cost) {
    double amount() {
      return cost.getAmount().doubleValue();
    }
  }

  DosageStudy(List<Point> curve, Point best, List<Point> stocked) {
    this.curve = List.copyOf(curve);
    this.best = best;
    this.stocked = List.copyOf(stocked);
  }

  /**
   * Studies the bed of a candidate; empty when it is sized by a rating or no dosage of its table
   * keeps every limit, and every margin that the candidate keeps.
   *
   * @param comparison the candidates of the home
   * @param candidate of the comparison
   * @return the study, or empty
   */
  public static Optional<DosageStudy> of(Comparison comparison, Candidate candidate) {
    return DosageSearch.of(comparison, candidate).flatMap(DosageSearch::study);
  }

  /**
   * {@return the points over the whole table, by rising dosage; only those that keep what the
   * candidate keeps}
   */
  public List<Point> curve() {
    return curve;
  }

  /** {@return the cheapest dosage of all, not only of those in stock} */
  public Point best() {
    return best;
  }

  /**
   * {@return the dosages in stock that keep every limit, and every margin that the candidate keeps}
   */
  public List<Point> stocked() {
    return stocked;
  }

  /** {@return the lowest and the highest dosage whose cost is within 2 % of the best} */
  public Range<SaltDosage> flat() {
    List<SaltDosage> within =
        Stream.concat(Stream.of(best), curve.stream())
            .filter(point -> point.amount() <= FLAT * best.amount())
            .map(Point::dosage)
            .sorted()
            .toList();
    return new Range<>(within.get(0), within.get(within.size() - 1));
  }

  /** {@return the cheapest dosage in stock; empty when none keeps what the candidate keeps} */
  public Optional<Point> bestStocked() {
    return stocked.stream().min(Comparator.comparing(Point::cost));
  }

  private List<Object> parts() {
    return List.of(curve, best, stocked);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DosageStudy study && parts().equals(study.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return "DosageStudy: best " + best + ", in stock " + stocked;
  }
}

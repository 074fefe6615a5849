package io.github.brinewright.comparison;

import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;

/**
 * How one candidate stands to one margin. Made by a {@link PriceList}.
 *
 * @param margin which
 * @param value of the candidate
 * @param limit the dealer's amount
 * @param grade kept, near or broken
 * @param excess by how much it misses the limit, as a share of the limit, both rounded to two
 *     figures; 0 when it keeps it; dimensionless
 */
public record MarginCheck(Margin margin, Figure value, Figure limit, Grade grade, double excess) {
  private static final double NEAR = 0.1;
  private static final double ROUND_OFF = 1e-9;
  private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);

  /**
   * Compares two amounts in one unit, rounded to two figures.
   *
   * @param value of the candidate; zero or more
   * @param limit more than zero
   * @param figure of an amount
   */
  static MarginCheck of(Margin margin, double value, double limit, DoubleFunction<Figure> figure) {
    double excess = excess(margin, value, limit);
    return new MarginCheck(margin, figure.apply(value), figure.apply(limit), grade(excess), excess);
  }

  private static double excess(Margin margin, double value, double limit) {
    double rounded = rounded(limit);
    double over = (rounded(value) - rounded) / rounded;
    return Math.max(0, margin.sense() == Margin.Sense.AT_MOST ? over : -over);
  }

  private static double rounded(double amount) {
    return BigDecimal.valueOf(amount).round(TWO_FIGURES).doubleValue();
  }

  private static Grade grade(double excess) {
    if (excess == 0) {
      return Grade.KEPT;
    }
    return excess <= NEAR + ROUND_OFF ? Grade.NEAR : Grade.BROKEN;
  }

  /** The same, near at the worst, since another method finds it not broken. */
  MarginCheck keptByAnotherMethod() {
    return grade == Grade.BROKEN ? new MarginCheck(margin, value, limit, Grade.NEAR, excess) : this;
  }

  /** {@return whether it counts against the candidate} */
  public boolean broken() {
    return grade == Grade.BROKEN;
  }
}

package io.github.brinewright.cost;

import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * Price plus the present value of what the years cost: each yearly line × its modified uniform
 * present value. Source: NIST Handbook 135.
 */
public final class LifeCost implements Explained {
  private static final int FACTOR_DECIMALS = 6;

  private final Quote quote;
  private final YearlyCost yearly;
  private final Escalation escalation;
  private final Money total;

  /** Adds up a candidate's life. */
  public LifeCost(Quote quote, YearlyCost yearly, Escalation escalation) {
    this.quote = quote;
    this.yearly = yearly;
    this.escalation = escalation;
    total = after(years());
  }

  /** The years compared. */
  public int years() {
    return quote.terms().years();
  }

  /** Price and years up to the end of the span compared. */
  public Money total() {
    return total;
  }

  /**
   * Price and the first {@code year} years, in today's money.
   *
   * @param year 0 to 30; 0 is the price alone
   */
  public Money after(int year) {
    Money sum = quote.total();
    for (CostKind kind : CostKind.values()) {
      sum = sum.plus(of(kind, year));
    }
    return sum;
  }

  /** Present value of one yearly line over the span compared. */
  public Money of(CostKind kind) {
    return of(kind, years());
  }

  private Money of(CostKind kind, int year) {
    return yearly.of(kind).multipliedBy(factor(kind, year), RoundingMode.HALF_EVEN);
  }

  private BigDecimal factor(CostKind kind, int year) {
    double factor =
        PresentValue.escalating(quote.terms().discountRate(), kind.rise(escalation), year);
    return BigDecimal.valueOf(factor).setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN);
  }

  @Override
  public List<Step> steps() {
    List<Figure> inputs = new ArrayList<>();
    inputs.add(Figure.of(quote.total()));
    for (CostKind kind : CostKind.values()) {
      inputs.add(Figure.of(yearly.of(kind)));
      inputs.add(Figure.of(factor(kind, years()).doubleValue(), 4));
    }
    inputs.add(Figure.of(years()));
    return List.of(new Step(StepKind.LIFE_COST, inputs, Figure.of(total()), Sources.HANDBOOK_135));
  }
}

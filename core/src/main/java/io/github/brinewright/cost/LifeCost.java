package io.github.brinewright.cost;

import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * Price plus the present value of what the years cost: each yearly line × its modified uniform
 * present value, in today's money. Equal when quote and yearly cost are. Source: NIST Handbook 135.
 */
public final class LifeCost implements Explained {
  /** The longest span compared. */
  public static final int MOST_YEARS = 30;

  private final Quote quote;
  private final YearlyCost yearly;
  private final RunningYears running;
  private final Money total;

  private LifeCost(Quote quote, YearlyCost yearly) {
    this.quote = quote;
    this.yearly = yearly;
    running =
        new RunningYears(
            yearly.lines(), yearly.tariff().escalation(), quote.terms().discountRate());
    total = after(years());
  }

  /**
   * Adds up a candidate's life.
   *
   * @param quote what the candidate is sold at, and over how many years it is compared
   * @param yearly its first year, of the same offer
   * @return its cost over the years, in today's money
   * @throws IllegalArgumentException when the two are of different offers
   */
  public static LifeCost of(Quote quote, YearlyCost yearly) {
    if (!quote.offer().equals(yearly.offer())) {
      throw new IllegalArgumentException(
          "the quote is of " + quote.offer() + ", but the yearly cost is of " + yearly.offer());
    }
    return new LifeCost(quote, yearly);
  }

  /** {@return the price} */
  public Quote quote() {
    return quote;
  }

  /** {@return the first year} */
  public YearlyCost yearly() {
    return yearly;
  }

  /** {@return how many years are compared} */
  public int years() {
    return quote.terms().years();
  }

  /** {@return price and years up to the end of the span compared} */
  public Money total() {
    return total;
  }

  /**
   * {@return price and the first years, in today's money}
   *
   * @param year 0 to {@value #MOST_YEARS}; 0 is the price alone
   * @throws IllegalArgumentException outside that range
   */
  public Money after(int year) {
    return quote.total().plus(running.after(year));
  }

  /**
   * {@return the present value of one yearly line over the span compared}
   *
   * @param kind of the lines of a year
   */
  public Money of(CostKind kind) {
    return running.of(kind, years());
  }

  @Override
  public List<Step> steps() {
    List<Figure> inputs = new ArrayList<>();
    inputs.add(Figure.of(quote.total()));
    for (CostKind kind : CostKind.values()) {
      inputs.add(Figure.of(yearly.of(kind)));
      inputs.add(Figure.of(running.factor(kind, years()).doubleValue(), 4));
    }
    inputs.add(Figure.of(years()));
    return List.of(new Step(StepKind.LIFE_COST, inputs, Figure.of(total()), Sources.HANDBOOK_135));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LifeCost life && quote.equals(life.quote) && yearly.equals(life.yearly);
  }

  @Override
  public int hashCode() {
    return total.hashCode();
  }

  @Override
  public String toString() {
    return "LifeCost of "
        + quote.offer().softener().id()
        + ": "
        + total
        + " in "
        + years()
        + " years";
  }
}

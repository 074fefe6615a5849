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
 * present value, in today's money, and what is bought again × its single present value at prices
 * that have risen. Equal when quote and yearly cost are. Source: NIST Handbook 135.
 */
public final class LifeCost implements Explained {
  /** The longest span compared. */
  public static final int MOST_YEARS = 30;

  private static final int FACTOR_DECIMALS = 6;

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
   * @throws IllegalArgumentException when the two are of different offers, or the yearly cost is
   *     not with the upkeep of the items quoted
   */
  public static LifeCost of(Quote quote, YearlyCost yearly) {
    if (!quote.offer().equals(yearly.offer())) {
      throw new IllegalArgumentException(
          "the quote is of " + quote.offer() + ", but the yearly cost is of " + yearly.offer());
    }
    if (!quote.upkeep().equals(yearly.upkeep())) {
      throw new IllegalArgumentException(
          "the items quoted take an upkeep of "
              + quote.upkeep()
              + " a year, but the yearly cost has "
              + yearly.upkeep());
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
    return quote.total().plus(running.after(year)).plus(renewals(year));
  }

  /** {@return what items that are bought again cost over the span compared, in today's money} */
  public Money renewals() {
    return renewals(years());
  }

  /** At the end of each nth year that another one follows, at prices that have risen. */
  private Money renewals(int years) {
    Money sum = Money.zero(quote.offer().currency());
    for (Item item : quote.items()) {
      int every = item.renewedEvery().orElse(years);
      for (int year = every; year < years; year += every) {
        sum = sum.plus(item.renewal().multipliedBy(risen(year), RoundingMode.HALF_EVEN));
      }
    }
    return sum;
  }

  private BigDecimal risen(int years) {
    double rise = Math.pow(1 + yearly.tariff().escalation().salt(), years);
    return BigDecimal.valueOf(rise * PresentValue.single(quote.terms().discountRate(), years))
        .setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN);
  }

  /**
   * {@return the present value of one yearly line over the span compared}
   *
   * @param kind of the lines of a year
   */
  public Money of(CostKind kind) {
    return of(kind, years());
  }

  /**
   * {@return the present value of one yearly line over the first years}
   *
   * @param kind of the lines of a year
   * @param first years from now; 0 to 200
   * @throws IllegalArgumentException outside that range
   */
  public Money of(CostKind kind, int first) {
    return running.of(kind, first);
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
    StepKind kind = StepKind.LIFE_COST;
    if (!renewals().isZero()) {
      inputs.add(Figure.of(renewals()));
      kind = StepKind.LIFE_COST_RENEWED;
    }
    return List.of(new Step(kind, inputs, Figure.of(total()), Sources.HANDBOOK_135));
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

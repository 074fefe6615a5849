package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One way to go on with the softener of a house, on the same simulated days as the others; made by
 * {@link ServiceStudy}. Immutable.
 */
public final class ServiceOption {
  /** The ways there are. */
  public enum Kind {
    /** As it was found. */
    AS_FOUND,
    /** The same bed under the same kind of control, set for this home. */
    SET_RIGHT,
    /** The same bed under a meter, by night unless it was found to regenerate at once. */
    METERED,
    /** The unit that is recommended from the price list, for the salt that the family uses. */
    REPLACED
  }

  private final Kind kind;
  private final Way way;
  private final SimulatedYears years;
  private final Map<CostKind, Money> lines;
  private final Drawn drawn;
  private final Paybacks paybacks;

  ServiceOption(
      Way way, SimulatedYears years, Map<CostKind, Money> lines, Drawn drawn, Paybacks paybacks) {
    kind = way.kind();
    this.way = way;
    this.years = years;
    this.lines = lines;
    this.drawn = drawn;
    this.paybacks = paybacks;
  }

  /** {@return which way} */
  public Kind kind() {
    return kind;
  }

  /** {@return the bed as it runs} */
  public BedSettings bed() {
    return years.bed();
  }

  /** {@return what came of it in the simulated years} */
  public SimulatedYears years() {
    return years;
  }

  /**
   * {@return the setup with its settings, findings and costs; empty for the softener as found, and
   * where it is right as it is}
   */
  public Optional<Candidate> candidate() {
    return way.candidate();
  }

  /** {@return the mean days from one regeneration to the next} */
  public double daysBetweenRegenerations() {
    return CalendarYear.DAYS / years.regenerations().mean();
  }

  /** {@return the salt of a regeneration} */
  public Mass saltPerRegeneration() {
    return bed().salt();
  }

  /** {@return the salt of a mean year} */
  public Mass salt() {
    return years.salt();
  }

  /** {@return the regeneration water of a mean year} */
  public Volume water() {
    return years.water();
  }

  /** {@return the hard water of a mean year, by cause} */
  public HardWater hardWater() {
    return years.hardWater();
  }

  /** {@return what salt, water, sewer, electricity and service cost a year, line by line} */
  public Map<CostKind, Money> costLines() {
    return lines;
  }

  /** {@return what a year costs} */
  public Money cost() {
    return Money.total(lines.values());
  }

  /** {@return what it costs to come to it, once; empty where no price is stated} */
  public Optional<Money> price() {
    return way.price();
  }

  /** {@return the salt of a year over draws of what is not known, in pounds} */
  public Spread saltPounds() {
    return spread(salt().pounds(), drawn.saltPounds());
  }

  /** {@return the regeneration water of a year over the draws, in US gallons} */
  public Spread waterGallons() {
    return spread(water().gallons(), drawn.waterGallons());
  }

  /** {@return the hard water of a year over the draws, in US gallons} */
  public Spread hardGallons() {
    return spread(hardWater().total().gallons(), drawn.hardGallons());
  }

  /** {@return the days of a year out of soft water over the draws} */
  public Spread runOutDays() {
    return spread(hardWater().runOutDays(), drawn.runOutDays());
  }

  /** {@return the cost of a year over the draws, in units of the currency} */
  public Spread costs() {
    return spread(cost().getAmount().doubleValue(), drawn.costs());
  }

  /** The ends over the draws, about the figure as stated. */
  private static Spread spread(double stated, double[] draws) {
    Spread drawn = Spread.of(draws);
    return new Spread(stated, Math.min(stated, drawn.low()), Math.max(stated, drawn.high()));
  }

  /**
   * {@return when its price has come back against the softener set right; empty where no price is
   * stated, and for the softener as found or set right}
   */
  public Optional<Payback> payback() {
    return paybacks.againstSetRight();
  }

  /**
   * {@return when its price has come back against the softener as it was found; empty where no
   * price is stated, and for the softener as found}
   */
  public Optional<Payback> paybackAgainstFound() {
    return paybacks.againstFound();
  }

  @Override
  public String toString() {
    return kind + ": " + years + ", " + cost() + " a year";
  }

  /** When the price of an option has come back. */
  record Paybacks(Optional<Payback> againstSetRight, Optional<Payback> againstFound) {
    static final Paybacks NONE = new Paybacks(Optional.empty(), Optional.empty());
  }
}

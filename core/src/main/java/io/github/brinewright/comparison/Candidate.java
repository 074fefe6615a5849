package io.github.brinewright.comparison;

import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.YearlyCost;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.CapacityBasis.Method;
import io.github.brinewright.softener.CurveBasis;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.Topic;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One setup with its design, what speaks against it, and what it costs; made by a {@link
 * PriceList}. Immutable. Equal when home, setup, prices and findings are.
 */
public final class Candidate implements Explained {
  private static final Set<Topic> WHY_NOT =
      EnumSet.of(Topic.WATER, Topic.DEMAND, Topic.CAPACITY, Topic.FLOW);

  private final Design design;
  private final List<Finding> findings;
  private final Served served;
  private final LifeCost life;

  Candidate(Design design, List<Finding> findings, Served served, LifeCost life) {
    this.design = design;
    this.findings = List.copyOf(findings);
    this.served = served;
    this.life = life;
  }

  /** {@return how it is set up} */
  public Design design() {
    return design;
  }

  /** {@return what speaks against it, the gravest first} */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * {@return what a rule found; empty when it does not apply}
   *
   * @param rule on candidates
   */
  public Optional<Finding> finding(Rule<DesignRule.Subject> rule) {
    return findings.stream().filter(finding -> finding.isOf(rule)).findFirst();
  }

  /** {@return its price} */
  public Quote quote() {
    return life.quote();
  }

  /** {@return its first year} */
  public YearlyCost yearly() {
    return life.yearly();
  }

  /** {@return its cost over the years compared} */
  public LifeCost life() {
    return life;
  }

  /** {@return whether it keeps every limit} */
  public boolean feasible() {
    return limitsBroken() == 0;
  }

  /** {@return what it breaks limits by, in the order of the rules} */
  public List<Finding> broken() {
    return findings.stream().filter(Finding::stops).toList();
  }

  /** {@return how many limits it breaks} */
  public int limitsBroken() {
    return broken().size();
  }

  /**
   * {@return how it stands to each margin, in their order; empty when its bed cannot serve the
   * home, and without those that nothing is known of, such as the pressure left where none was
   * measured}
   */
  public List<MarginCheck> margins() {
    return served.margins();
  }

  /**
   * {@return how it stands to one margin; empty as in {@link #margins()}}
   *
   * @param margin the one asked for
   */
  public Optional<MarginCheck> margin(Margin margin) {
    return margins().stream().filter(check -> check.margin() == margin).findFirst();
  }

  /**
   * {@return the margins of a grade}
   *
   * @param grade kept, near or broken
   */
  public List<MarginCheck> margins(Grade grade) {
    return margins().stream().filter(check -> check.grade() == grade).toList();
  }

  /** {@return the margins that it breaks} */
  public List<MarginCheck> marginsBroken() {
    return margins(Grade.BROKEN);
  }

  /** {@return the margins that it misses by little} */
  public List<MarginCheck> marginsNear() {
    return margins(Grade.NEAR);
  }

  /** {@return hard water of a mean year by cause; empty when its bed cannot serve the home} */
  public Optional<HardWater> hardWater() {
    return served.hardWater();
  }

  /**
   * {@return hard water of a mean year from all causes, as so many days of mean use; empty when its
   * bed cannot serve the home} Dimensionless.
   */
  public OptionalDouble hardWaterDays() {
    return hardWater().stream()
        .mapToDouble(hard -> hard.daysOf(design.home().softenedExpected()))
        .findFirst();
  }

  /** {@return the softener} */
  public Softener softener() {
    return design.softener();
  }

  /** {@return the setup} */
  public Setup setup() {
    return design.setup();
  }

  /** {@return the softener with its prices} */
  public Offer offer() {
    return quote().offer();
  }

  /** {@return whether its capacity rests on a rating alone} */
  public boolean byRating() {
    return design.basis().method() == Method.RATED_CAPACITY;
  }

  /** {@return what its capacity is stated on} */
  public CurveBasis curveBasis() {
    return byRating() ? CurveBasis.RATING : softener().resin().curve().basis();
  }

  /** {@return the volume of its bed} */
  public Volume resin() {
    return design.basis().resin();
  }

  /** {@return its salt dosage as sodium chloride; of a rated bed its salt over its volume} */
  public SaltDosage dosage() {
    return dosage(design.basis());
  }

  /** As the dealer states it, without round-off. */
  SaltDosage statedDosage() {
    return setup().dosage().orElseGet(this::dosage);
  }

  static SaltDosage dosage(CapacityBasis basis) {
    double pounds = basis.saltPerRegeneration().pounds() / basis.regenerant().massRatio();
    return SaltDosage.ofPoundsPerCubicFoot(pounds / basis.resin().cubicFeet());
  }

  /** {@return the salt for each regeneration, as its one basis has it} */
  public Mass salt() {
    return design.basis().saltPerRegeneration();
  }

  /** All steps; of a candidate that breaks a limit only those that tell why it cannot serve. */
  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(design.steps());
    steps.addAll(yearly().steps());
    steps.addAll(life.steps());
    if (!feasible()) {
      steps.removeIf(step -> !WHY_NOT.contains(step.kind().topic()));
    }
    steps.sort((a, b) -> a.kind().compareTo(b.kind()));
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Candidate candidate
        && life.equals(candidate.life)
        && findings.equals(candidate.findings)
        && served.equals(candidate.served);
  }

  @Override
  public int hashCode() {
    return life.hashCode();
  }

  @Override
  public String toString() {
    return "Candidate "
        + softener().id()
        + " "
        + setup().control()
        + ", "
        + salt()
        + " of salt, "
        + life.total()
        + " in "
        + life.years()
        + " years, breaks "
        + broken().stream().map(Finding::code).toList()
        + marginsBroken().stream().map(check -> check.margin().code()).toList();
  }
}
